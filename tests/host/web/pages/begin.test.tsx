import { expect, test } from "vitest";
import {
  cropsPage,
  FIELDS,
  type FormAnswers,
  firstTextPage,
  gardenFormPage,
} from "../../../../src/host/web/pages/begin.tsx";

const TYPED = Object.fromEntries(FIELDS.map((name) => [name, `<${name}>`])) as FormAnswers;

test("the first page keeps what was typed and tells what is wrong with it", () => {
  const html = gardenFormPage(
    { ...TYPED, clock: "Europe/Oslo", measures: "metric" },
    ["UTC", "Europe/Oslo"],
    ["There is no day <x>."],
    "/g/invitation-1/m/restore",
  );
  expect(html).toContain('value="&lt;garden&gt;"');
  expect(html).toContain("\n&lt;beds&gt;</textarea>");
  expect(html).toMatch(/<option value="Europe\/Oslo" selected/);
  expect(html).toMatch(/value="metric" checked/);
  expect(html).toContain('action="/g/invitation-1/m/restore" enctype="multipart/form-data"');
  expect(html).toContain("There is no day &lt;x&gt;.");
  expect(html.replaceAll(/&\w+;/g, "")).not.toContain("<x>");
});

test("every field of the first page has its label", () => {
  const html = gardenFormPage(TYPED, ["UTC"], [], "restore");
  const ids = [...html.matchAll(/ id="(\w+)"/g)].map(([, id]) => id);
  for (const id of ids) expect(html, id).toContain(`<label for="${id}">`);
  expect(ids.length).toBeGreaterThan(6);
});

test("the second page carries the first along, and asks for a bed only where there are two", () => {
  const crops = [{ key: "beet", name: "Beets" }];
  const html = cropsPage(TYPED, crops, ["South bed", "Root bed"]);
  for (const name of FIELDS) expect(html).toContain(`name="${name}" value="&lt;${name}&gt;"`);
  expect(html).toContain('aria-label="The bed for Beets"');
  expect(cropsPage(TYPED, crops, ["South bed"])).not.toContain("<select");
});

test("the third page is the plan as text, from no version, with its problems", () => {
  const at = { file: "plan", line: 1, column: 1 };
  const problem = { code: "x", weight: "problem", at, is: "No", shouldBe: "Yes" } as const;
  const html = firstTextPage({
    text: "garden: <x>",
    check: "check",
    problems: [problem],
    why: "Not yet",
  });
  expect(html).toContain('name="base" value="0"');
  expect(html).toContain("garden: &lt;x&gt;");
  expect(html).toContain("No. Yes.");
  expect(html).toContain('role="alert"');
});
