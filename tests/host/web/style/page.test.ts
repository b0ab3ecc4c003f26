import { expect, test } from "vitest";
import { PAGE_STYLE } from "../../../../src/host/web/style/page.ts";

test("type is read at arm's length: 18 px, nothing under 15, in a scale of a few sizes", () => {
  expect(PAGE_STYLE).toContain("font: 1.125rem/1.5 ");
  const sizes = [...PAGE_STYLE.matchAll(/(?:font-size: |font: (?:\d+ )?)([\d.]+)rem/g)];
  const rems = new Set(sizes.map(([, rem]) => Number(rem)));
  expect(Math.min(...rems) * 16).toBeGreaterThanOrEqual(15);
  expect(rems.size).toBeLessThanOrEqual(5);
});

test("a link round a picture is as large as the picture, for the focus to be seen", () => {
  expect(PAGE_STYLE).toContain("a:has(> img) { display: block; }");
});

test("on paper folds are open, and no form stands but a list to tick", () => {
  const [, print = ""] = PAGE_STYLE.split("@media print");
  // Forms are laid out by a sheet that comes later, which would win.
  expect(print).toContain("form:not(.ticks form), .do { display: none !important; }");
  expect(print).toContain("details::details-content { content-visibility: visible;");
});

test("a fold can be hit with a thumb, and everything in focus has an outline", () => {
  expect(PAGE_STYLE).toMatch(/summary \{[^}]*min-height: 3rem/);
  expect(PAGE_STYLE).toMatch(/summary, [^{]*\):focus-visible \{ outline: 3px/);
});
