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

test("a fold can be hit with a thumb, and everything in focus has an outline", () => {
  expect(PAGE_STYLE).toMatch(/summary \{[^}]*min-height: 3rem/);
  expect(PAGE_STYLE).toMatch(/summary, [^{]*\):focus-visible \{ outline: 3px/);
});
