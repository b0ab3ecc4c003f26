import { expect, test } from "vitest";
import { marginsOf, paragraph, pictureHead, sheetOf } from "../../../src/views/pictures/sheet.ts";
import { parse, textIn, under } from "./xml.ts";

test("a phone's sheet is 390 wide and as high as it needs, a page is A4 on its side", () => {
  expect([sheetOf("phone").widthPx, sheetOf("phone").heightPx]).toEqual([390, null]);
  const page = sheetOf("page");
  expect(page.widthPx / (page.heightPx ?? 1)).toBeCloseTo(297 / 210, 2);
  expect(marginsOf(page)).toEqual({ leftPx: page.marginPx, rightPx: page.widthPx - page.marginPx });
});

test("a paragraph is wrapped, and ends below its last line", () => {
  const text = "How warm the soil is at the depth of seed, from a cool season to a warm one.";
  const { svg: written, endsPx } = paragraph(
    text,
    { leftPx: 0, rightPx: 200 },
    { y: 20, sizePx: 10 },
  );
  expect(written.length).toBeGreaterThan(1);
  expect(written.map((line) => textIn(parse(line))).join(" ")).toBe(text);
  expect(endsPx).toBeCloseTo(20 + written.length * 13.5);
  expect(paragraph("", { leftPx: 0, rightPx: 200 }, { y: 20, sizePx: 10 })).toEqual({
    svg: [],
    endsPx: 20,
  });
});

test("a long title takes two lines and is cut behind them", () => {
  const title = (said: string) =>
    under(
      parse(`<g>${pictureHead(sheetOf("phone"), said, "Short.").svg.join("")}</g>`),
      "text",
    ).map(textIn);
  expect(title("Quarry Lane, 2027")).toEqual(["Quarry Lane, 2027", "Short."]);
  const long = title(
    "The Long Field Allotment Society of the Upper Valley and of all its Lower Neighbours, 2027",
  );
  expect(long.length).toBe(3);
  expect(long[1]).toMatch(/…$/);
});
