import { expect, test } from "vitest";
import { block, page, ruled, said } from "../../../src/views/paper/page.ts";
import { textIn, under } from "../pictures/xml.ts";
import { looking, readPage } from "./paper.ts";

test("a page is well-formed, fetches nothing and runs nothing", () => {
  const html = page("A & B", said("p", "line", "<b>"), ruled(3));
  const tag = readPage(html);
  expect(under(tag, "title").map(textIn)).toEqual(["A & B"]);
  expect(looking(tag, "line").map(textIn)).toEqual(["<b>"]);
  expect(looking(tag, "ruled").flatMap((each) => under(each, "p")).length).toBe(3);
  expect(html).not.toMatch(/<script|<link|src=|href=|url\(|@import/);
});

test("what would be empty is not there", () => {
  expect([said("p", "line", ""), block("div", "box", "", "")]).toEqual(["", ""]);
});
