import { expect, test } from "vitest";
import { block, ruledLines, sheetHtml, textElement } from "../../../src/views/paper/page.ts";
import { textIn, under } from "../pictures/xml.ts";
import { looking, readPage } from "./paper.ts";

test("a page is well-formed, fetches nothing and runs nothing", () => {
  const html = sheetHtml("A & B", textElement("p", "line", "<b>"), ruledLines(3));
  const tag = readPage(html);
  expect(under(tag, "title").map(textIn)).toEqual(["A & B"]);
  expect(looking(tag, "line").map(textIn)).toEqual(["<b>"]);
  expect(looking(tag, "ruled").flatMap((each) => under(each, "p")).length).toBe(3);
  expect(html).not.toMatch(/<script|<link|src=|href=|url\(|@import/);
});

test("what would be empty is not there", () => {
  expect([textElement("p", "line", ""), block("div", "box", "", "")]).toEqual(["", ""]);
});
