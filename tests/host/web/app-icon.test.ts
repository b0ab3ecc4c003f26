import { expect, test } from "vitest";
import { APP_ICON_SVG, ICON_SIZES, iconPng } from "../../../src/host/web/app-icon.ts";

test.each(ICON_SIZES)("the drawing of %i dots is a PNG of that many a side", (size) => {
  const png = iconPng(size);
  expect([...png.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const view = new DataView(png.buffer, png.byteOffset);
  expect([view.getUint32(16), view.getUint32(20)]).toEqual([size, size]);
});

test("it is whole to its edges, and asks for nothing", () => {
  expect(APP_ICON_SVG).toContain('d="M0 0h64v64H0z"');
  expect(APP_ICON_SVG).not.toMatch(/href|script|style/);
});
