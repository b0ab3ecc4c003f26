import { describe, expect, test } from "vitest";
import type { BedRow } from "../../../src/views/pictures/beds.ts";
import {
  type Filling,
  fillColumns,
  type OpenColumn,
} from "../../../src/views/pictures/fill-columns.ts";
import type { Lane } from "../../../src/views/pictures/lanes.ts";
import { on } from "./drawn.ts";

const days = { from: on("2027-04-01"), to: on("2027-11-30") };
const FILLING: Filling = {
  topPx: 100,
  lowest: 320,
  heights: { airPx: 30, groundPx: 20, headingPx: 10, gutterPx: 0 },
  scales: [
    { ...days, leftPx: 0, rightPx: 200 },
    { ...days, leftPx: 300, rightPx: 500 },
  ],
};
const row = (name: string): BedRow => ({ bed: null, name, plants: [] });
const lanes = (count: number): readonly Lane[] => Array.from({ length: count }, () => []);

/** Beds of so many lanes filled in, and for each column its beds by name and lanes. */
function filled(...counts: readonly number[]): readonly string[][] {
  const columns: OpenColumn[] = [];
  counts.forEach((count, i) => {
    fillColumns(columns, { row: row(`bed ${i + 1}`), lanes: lanes(count) }, FILLING);
  });
  return columns.map(({ blocks }) =>
    blocks.map((block) => `${block.row.name}: ${block.lanes.length}`),
  );
}

describe("beds fill columns", () => {
  test("one below the other as long as there is room, then whole in the next", () => {
    expect(filled(1, 2, 1)).toEqual([["bed 1: 1", "bed 2: 2"], ["bed 3: 1"]]);
    expect(filled(2, 3)).toEqual([["bed 1: 2"], ["bed 2: 3"]]);
  });

  test("one too long for any column goes on from one to the next", () => {
    expect(filled(1, 7)).toEqual([["bed 1: 1", "bed 2: 2"], ["bed 2: 4"], ["bed 2: 1"]]);
  });

  test("on a sheet without end all stand in one", () => {
    const columns: OpenColumn[] = [];
    fillColumns(
      columns,
      { row: row("all"), lanes: lanes(90) },
      { ...FILLING, lowest: Number.POSITIVE_INFINITY },
    );
    expect(columns.map(({ endsPx }) => endsPx)).toEqual([100 + 10 + 90 * 50 + 8]);
  });
});
