import { expect, test } from "vitest";
import { FORM_STYLE } from "../../../../src/host/web/style/form.ts";

test("what a form asks in hints keeps its distance from the field above", () => {
  expect(FORM_STYLE).toContain("textarea { display: block; }");
  expect(FORM_STYLE).toContain(".rows > .faint { margin-top: 0.35rem; }");
});

test("a crop and its bed have room beside each other in half of a desk's page", () => {
  const bases = [...FORM_STYLE.matchAll(/\.crops (?:label|select) \{ flex: \d \d ([\d.]+)rem/g)];
  expect(bases).toHaveLength(2);
  // Half of 40 less the gap of two columns, less the gap between the two.
  expect(bases.reduce((sum, [, rem]) => sum + Number(rem), 0)).toBeLessThanOrEqual(17.5);
});

test("what is hidden is hidden, whatever it is", () => {
  expect(FORM_STYLE).toContain("[hidden] { display: none !important; }");
});

test("buttons and fields are as high as a thumb asks", () => {
  expect(FORM_STYLE).toMatch(/button, \.do \{[^}]*min-height: 3rem/);
  expect(FORM_STYLE).toMatch(/input, select, textarea \{[^}]*min-height: 3rem/);
});
