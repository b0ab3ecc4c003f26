import { describe, expect, test } from "vitest";
import {
  allFree,
  boxOf,
  clash,
  inside,
  labelRequestAt,
  placeLabels,
} from "../../../src/views/pictures/labels.ts";
import type { TextRun } from "../../../src/views/pictures/svg.ts";

const ROOM = { x: 0, y: 0, widthPx: 400, heightPx: 100 };
const run = (text: string): TextRun => ({ text, ink: "ink", look: "plain" });

test("a line's room lies round its letters, before or behind its x", () => {
  const at = (from: "start" | "middle" | "end") =>
    boxOf({ x: 100, y: 50, sizePx: 10, from }, [run("beets")]);
  const { widthPx } = at("start");
  expect(at("start").x).toBe(100);
  expect(at("end").x).toBeCloseTo(100 - widthPx);
  expect(at("middle").x).toBeCloseTo(100 - widthPx / 2);
  expect(at("start").y).toBeLessThan(50);
  expect(at("start").y + at("start").heightPx).toBeGreaterThan(50);
});

test("boxes that share only an edge do not touch", () => {
  const box = { x: 0, y: 0, widthPx: 10, heightPx: 10 };
  expect(clash(box, { ...box, x: 10 })).toBe(false);
  expect(clash(box, { ...box, x: 9.9 })).toBe(true);
  expect(inside(box, box)).toBe(true);
  expect(inside({ ...box, y: -0.1 }, box)).toBe(false);
  expect(allFree([box], box, [{ ...box, x: 5 }])).toBe(false);
});

describe("setting labels", () => {
  test("the first gets its best place, the next moves aside, and one without room is left out", () => {
    const wish = (text: string) => labelRequestAt(200, { rows: [50], sizePx: 10 }, run(text));
    const set = placeLabels([wish("beets beets"), wish("carrots"), wish("turnips")], ROOM);
    expect(set.svg.length).toBe(1);
    const rows = placeLabels(
      ["beets", "carrots", "turnips"].map((text) =>
        labelRequestAt(200, { rows: [50, 70, 90], sizePx: 10 }, run(text)),
      ),
      ROOM,
    );
    expect(rows.svg.length).toBe(3);
    expect(rows.boxes.map(({ y }) => y)).toEqual([42, 62, 82]);
  });

  test("what stands there already is kept clear of and not given back", () => {
    const taken = { x: 0, y: 0, widthPx: 400, heightPx: 60 };
    const set = placeLabels(
      [labelRequestAt(200, { rows: [50, 80], sizePx: 10 }, run("beets"))],
      ROOM,
      [taken],
    );
    expect(set.boxes.map(({ y }) => y)).toEqual([72]);
  });

  test("a label of two lines is set whole or not at all", () => {
    const place = (y: number) => [
      { x: 10, y, sizePx: 10, from: "start" as const },
      { x: 10, y: y + 15, sizePx: 10, from: "start" as const },
    ];
    const two = { lines: [[run("6 May")], [run("usual")]], places: [place(90)] };
    expect(placeLabels([two], ROOM).svg).toEqual([]);
    expect(placeLabels([{ ...two, places: [place(90), place(50)] }], ROOM).svg.length).toBe(2);
  });
});
