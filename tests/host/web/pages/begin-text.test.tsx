import { expect, test } from "vitest";
import { firstTextPage } from "../../../../src/host/web/pages/begin-text.tsx";
import { formWith, TYPED } from "../forms.ts";

test("the plan as text, from no version, with its problems and all answers beside it", () => {
  const at = { file: "plan", line: 1, column: 1 };
  const problem = { code: "x", weight: "problem", at, is: "No", shouldBe: "Yes" } as const;
  const html = firstTextPage({
    ...{ form: formWith(), text: "garden: <x>", textOf: "garden: x", check: "check" },
    ...{ problems: [problem], said: "Not yet" },
  });
  expect(html).toContain('name="base" value="0"');
  expect(html).toContain("\ngarden: &lt;x&gt;</textarea>");
  expect(html).toContain('name="textOf" value="garden: x"');
  expect(html).toContain("No. Yes.");
  expect(html).toContain('data-check="check"');
  expect(html).toMatch(/role="alert"[^>]*>Not yet/);
  for (const name of Object.keys(TYPED)) expect(html).toContain(`type="hidden" name="${name}"`);
});
