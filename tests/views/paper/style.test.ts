import { expect, test } from "vitest";
import { SHEET_STYLE } from "../../../src/views/paper/style.ts";

const sizes = [...SHEET_STYLE.matchAll(/(?:font-size: |font: (?:600 )?)([\d.]+)pt/g)].map(
  ([, size]) => Number(size),
);

test("body type is twelve points and more, and no words are under ten", () => {
  expect(SHEET_STYLE).toMatch(/body \{[^}]*font: 1[2-4](?:\.5)?pt/);
  expect(sizes.length).toBeGreaterThan(8);
  expect(sizes.filter((size) => size < 10)).toEqual([9]);
});

test("nothing is told by colour, and nothing is fetched", () => {
  const colours = [...SHEET_STYLE.matchAll(/#(\w{3,6})\b/g)].map(([, colour]) => colour);
  expect([...new Set(colours)].sort()).toEqual(["000", "777", "fff"]);
  expect(SHEET_STYLE).not.toMatch(/url\(|@import|rgb\(/);
});

test("any paper will do: it names no size, and the style can stand in a well-formed page", () => {
  expect(SHEET_STYLE).not.toMatch(/\bsize:\s*(?:A4|letter)/i);
  expect(SHEET_STYLE).not.toMatch(/[<"&]/);
});
