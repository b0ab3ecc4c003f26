import { expect, test } from "vitest";
import { BAR_STYLE } from "../../../../src/host/web/style/bar.ts";
import { contrast } from "./contrast.ts";

const rule = (selector: string) =>
  BAR_STYLE.split("\n").find((line) => line.startsWith(`${selector} {`)) ?? "";

test("the bar brings all of its colours with it, for it stands under sheets too", () => {
  expect(BAR_STYLE).not.toContain("var(");
  const [ground = "", names = "", label = ""] = [
    /background: (#\w{6})/.exec(BAR_STYLE)?.[1],
    /color: (#\w{6}); text-decoration/.exec(BAR_STYLE)?.[1],
    /background: (#\w{6})/.exec(rule(".bar a[aria-current]"))?.[1],
  ];
  expect(contrast(names, ground)).toBeGreaterThan(12);
  expect(contrast(ground, label)).toBeGreaterThan(12);
});

test("a place in it is as high as a thumb asks, and what is in focus never lies under it", () => {
  expect(Number(/min-height: ([\d.]+)rem/.exec(BAR_STYLE)?.[1]) * 16).toBeGreaterThanOrEqual(44);
  expect(BAR_STYLE).toMatch(/scroll-padding-bottom: [\d.]+rem/);
});

test("it is not printed, and takes no room there", () => {
  const print = BAR_STYLE.slice(BAR_STYLE.indexOf("@media print"));
  expect(print).toContain(".bar { display: none; }");
  expect(print).toContain("padding-bottom: 0");
});
