import { describe, expect, test } from "vitest";
import { placesIn } from "../../../../src/views/pictures/from-above/places.ts";
import { rowPiecesOn } from "../../../../src/views/pictures/from-above/rows.ts";
import type { Standing } from "../../../../src/views/pictures/from-above/standing.ts";
import { isoDay } from "../../../gardens.ts";
import { standing } from "./beds.ts";

const BED = { lengthCm: 300, widthCm: 100 };

function pieces(each: Standing, on: string, headCm = 0) {
  const [place] = placesIn([each], BED);
  if (!place) throw new Error("no place");
  return rowPiecesOn(place, isoDay(on), headCm);
}

const SOWINGS = [
  { from: isoDay("2027-05-01"), gone: isoDay("2027-06-01") },
  { from: isoDay("2027-05-15"), gone: isoDay("2027-07-01") },
];

describe("rows on a day", () => {
  test("run from end to end, below the room for their name", () => {
    const two = standing("beets", { amount: { kind: "rows", count: 2 } });
    expect(pieces(two, "2027-06-01")).toEqual([
      { y: 10, x1: 0, x2: 300 },
      { y: 30, x1: 0, x2: 300 },
    ]);
    expect(pieces(two, "2027-06-01", 20).map(({ y }) => y)).toEqual([25, 35]);
    expect(pieces(two, "2027-08-01")).toEqual([]);
  });

  test("are shared by sowings: each has its own part, and leaves it empty once it is gone", () => {
    const each = standing("salad", { sowings: SOWINGS });
    expect(pieces(each, "2027-05-10")).toEqual([{ y: 10, x1: 0, x2: 150 }]);
    expect(pieces(each, "2027-05-20")).toHaveLength(2);
    expect(pieces(each, "2027-06-10")).toEqual([{ y: 10, x1: 150, x2: 300 }]);
  });

  test("are filled one after the other by plants that are counted", () => {
    const each = standing("leeks", { amount: { kind: "plants", count: 45 }, sowings: SOWINGS });
    const all = pieces(each, "2027-05-20");
    const length = all.reduce((sum, { x1, x2 }) => sum + x2 - x1, 0);
    expect(length).toBeCloseTo(900);
    expect(new Set(all.map(({ y }) => y)).size).toBe(3);
  });
});
