import { describe, expect, test } from "vitest";
import { cutTo, namesThatFit, widthOf, wrapped } from "../../../src/views/pictures/measure.ts";

describe("width", () => {
  test("grows with the size, and wide letters are wider than narrow ones", () => {
    expect(widthOf("beet", 20)).toBeCloseTo(2 * widthOf("beet", 10));
    expect(widthOf("MMMM", 10)).toBeGreaterThan(2 * widthOf("llll", 10));
    expect(widthOf("", 10)).toBe(0);
  });

  test("marks over a letter take none, and letters of other scripts take some", () => {
    expect(widthOf("e\u0301", 10)).toBe(widthOf("e", 10));
    expect(widthOf("大根", 10)).toBeGreaterThan(20);
    expect(widthOf("Морква", 10)).toBeGreaterThan(widthOf("Morkva", 10));
  });
});

describe("cutting", () => {
  test("leaves alone what fits, and ends the rest with an ellipsis within the width", () => {
    expect(cutTo("Beets", 100, 10)).toBe("Beets");
    const cut = cutTo("The long one from last year's swap", 100, 10);
    expect(cut).toMatch(/^The long.*…$/);
    expect(widthOf(cut, 10)).toBeLessThanOrEqual(100);
  });

  test("never parts what a reader sees as one character", () => {
    const family = "👩‍👩‍👧‍👦";
    expect(cutTo(family.repeat(5), 3 * widthOf(family, 10), 10).replaceAll(family, "")).toBe("…");
  });
});

test("lines are wrapped between words, a number kept with what it counts", () => {
  const lines = wrapped("Plants go out from 21 May or so", 110, 10);
  expect(lines.length).toBeGreaterThan(1);
  for (const line of lines) {
    expect(widthOf(line, 10)).toBeLessThanOrEqual(110);
    expect(line).not.toMatch(/\d$/);
  }
  expect(wrapped("", 100, 10)).toEqual([]);
});

test("a list names as many as its lines hold, then how many more", () => {
  const names = ["beets", "carrots", "turnips", "parsnips", "radishes"];
  expect(namesThatFit(names, { widthPx: 1000, sizePx: 10, lines: 1 })).toEqual([
    "beets, carrots, turnips, parsnips and radishes",
  ]);
  expect(namesThatFit(names, { widthPx: 130, sizePx: 10, lines: 1 })).toEqual([
    "beets, carrots and 3 more",
  ]);
  expect(namesThatFit(["parsnips"], { widthPx: 10, sizePx: 10, lines: 1 })).toEqual(["…"]);
});
