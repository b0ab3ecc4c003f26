import { expect, test } from "vitest";
import { Box, Lines, RuledLines, renderSheet } from "../../../src/views/paper/page.tsx";
import { SHEET_STYLE } from "../../../src/views/paper/style.ts";
import { textIn, under } from "../pictures/xml.ts";
import { looking, readPage } from "./paper.ts";

test("a page is well-formed, fetches nothing and runs nothing", () => {
  const html = renderSheet({
    title: "A & B",
    children: (
      <>
        <Lines look="line" lines={["<b>"]} />
        <RuledLines count={3} />
      </>
    ),
  });
  const tag = readPage(html);
  expect(under(tag, "title").map(textIn)).toEqual(["A & B"]);
  expect(looking(tag, "line").map(textIn)).toEqual(["<b>"]);
  expect(looking(tag, "ruled").flatMap((each) => under(each, "p")).length).toBe(3);
  expect(html).not.toMatch(/<script|<link|src=|href=|url\(|@import/);
});

test("a page carries its style as it is written, which a browser does not unescape", () => {
  expect(renderSheet({ title: "A", children: null })).toContain(`<style>${SHEET_STYLE}</style>`);
});

test("no character of a text hurts the page or turns the direction of what follows", () => {
  const html = renderSheet({
    title: "a\u0000b\u202e",
    children: <p title={"c\u0007"}>{"\uffff"}</p>,
  });
  expect(html).toContain("<title>ab</title>");
  expect(html).toContain('<p title="c"></p>');
});

test("what would be empty is not there", () => {
  expect(String(<Lines look="line" lines={["", "a", ""]} />)).toBe('<p class="line">a</p>');
  expect(String(<Lines look="line" lines={[]} />)).toBe("");
});

test("a box is empty or ticked", () => {
  expect([false, true].map((ticked) => String(<Box ticked={ticked} />))).toEqual([
    '<span class="box"></span>',
    '<span class="box">x</span>',
  ]);
});
