import { expect, test } from "vitest";
import { INK } from "../../../src/views/paper/ink.ts";

const sizes = [...INK.matchAll(/(?:font-size: |font: (?:600 )?)([\d.]+)pt/g)].map(([, size]) =>
  Number(size),
);

test("body type is twelve points and more, and no words are under ten", () => {
  expect(INK).toMatch(/body \{[^}]*font: 1[2-4](?:\.5)?pt/);
  expect(sizes.length).toBeGreaterThan(8);
  expect(sizes.filter((size) => size < 10)).toEqual([9]);
});

test("nothing is told by colour, and nothing is fetched", () => {
  const colours = [...INK.matchAll(/#(\w{3,6})\b/g)].map(([, colour]) => colour);
  expect([...new Set(colours)].sort()).toEqual(["000", "777", "fff"]);
  expect(INK).not.toMatch(/url\(|@import|rgb\(/);
});

test("any paper will do: it names no size, and the style can stand in a well-formed page", () => {
  expect(INK).not.toMatch(/\bsize:\s*(?:A4|letter)/i);
  expect(INK).not.toMatch(/[<"&]/);
});
