import { expect, test } from "vitest";
import { formPage, titleOfStep } from "../../../../src/host/web/pages/begin.tsx";
import { formWith, TYPED } from "../forms.ts";

const page = (over: Partial<Parameters<typeof formPage>[0]> = {}) =>
  formPage({ step: "beds", form: formWith(), errors: [], children: <b>Here</b>, ...over });

test("a page carries all that it does not ask for, and says where one is", () => {
  const html = page();
  expect(html).toContain("Step 4 of 7");
  expect(html).toContain('name="at" value="beds"');
  for (const name of Object.keys(TYPED)) {
    const carried = html.includes(`type="hidden" name="${name}"`);
    expect(carried, name).toBe(!name.startsWith("beds."));
  }
});

test("the way on comes first, so that the return key takes it; there is a way back, and one to the overview once that was seen", () => {
  const steps = (html: string) =>
    [...html.matchAll(/name="step" value="(\w+)"/g)].map(([, step]) => step);
  expect(steps(page({ more: "More rows" }))).toEqual(["next", "more", "back"]);
  expect(steps(page({ form: { ...formWith(), looked: true } }))).toEqual(["next", "look", "back"]);
  expect(steps(page({ step: "garden" }))).toEqual(["next"]);
});

test("with something wrong the title says so", () => {
  const html = page({ errors: [{ field: "beds.0.name", says: "Give it a name." }] });
  expect(html).toContain("<title>Not quite yet: The beds</title>");
  expect(html).toContain('<a href="#beds.0.name">Give it a name.</a>');
  expect(titleOfStep("look")).toBe("Look it over");
});
