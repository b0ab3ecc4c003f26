import { describe, expect, test } from "vitest";
import { type LabelArea, type LabelMark, labelBeside } from "../../../src/views/pictures/beside.ts";
import type { Box } from "../../../src/views/pictures/labels.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { labelsOf, on } from "./drawn.ts";
import { parse } from "./xml.ts";

const scale = { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 0, rightPx: 400 };
const around: LabelArea = {
  field: { scale, topPx: 0, lowPx: 400, leastC: 0, mostC: 20 },
  sheet: sheetOf("phone"),
  within: { x: 0, y: 0, widthPx: 400, heightPx: 400 },
  taken: [],
  band: [],
};
const mark: LabelMark = {
  x: 100,
  y: 200,
  sides: [
    {
      from: "start",
      at: 120,
      lines: [
        [{ text: "Beets", ink: "ink", look: "name" }],
        [{ text: "45 °F", ink: "pencil", look: "plain" }],
      ],
    },
  ],
  dot: "",
};
const set = (taken: Box[], more: Partial<LabelArea> = {}) =>
  labelsOf(parse(`<g>${labelBeside(mark, { ...around, ...more }, taken).join("")}</g>`)).map(
    ({ box }) => Math.round(box.y),
  );

describe("the words of a mark", () => {
  test("stand at its height, line below line, and take their room", () => {
    const taken: Box[] = [];
    const [first = 0, second = 0] = set(taken);
    expect(Math.abs(first + 7 - 200)).toBeLessThan(5);
    expect(second).toBeGreaterThan(first + 10);
    expect(taken.length).toBe(2);
  });

  test("move off what stands there", () => {
    const other = { x: 0, y: 190, widthPx: 400, heightPx: 12 };
    const [first = 0] = set([other]);
    expect(first).toBeGreaterThanOrEqual(202);
  });

  test("keep off the band where they can, and lie on it where they must", () => {
    const band = [{ x: 0, y: 190, widthPx: 400, heightPx: 12 }];
    expect(set([], { band })[0]).toBeGreaterThanOrEqual(202);
    expect(set([], { band: [{ x: 0, y: 0, widthPx: 400, heightPx: 400 }] }).length).toBe(2);
  });

  test("are left out where nothing is free", () => {
    expect(set([{ x: 0, y: 0, widthPx: 400, heightPx: 400 }])).toEqual([]);
  });
});
