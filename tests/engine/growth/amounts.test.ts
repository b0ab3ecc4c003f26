import { describe, expect, test } from "vitest";
import { celsius, quantity } from "../../../src/base/quantities/quantity.ts";
import {
  bulbsFor,
  expectedShare,
  type PlantingInBed,
  plantsOf,
  roundSeedCount,
  rowCm,
  rowLayoutOf,
  seedsFor,
  sowApartCm,
} from "../../../src/engine/growth/amounts.ts";
import type { Amount, Planting } from "../../../src/garden/model/plan.ts";
import { QUARRY } from "../../gardens.ts";
import { must, ours } from "../../sources/ours.ts";
import { growingOf } from "./growing.ts";

const INCH = 2.54;
const ROOT_BED = growingOf(QUARRY, "carrot");

/** Some of a crop in the root bed, 12 ft long. */
function some(key: string, amount: Amount | null, given: Partial<Planting> = {}): PlantingInBed {
  const crop = ours(key);
  const [start = "seed outdoors"] = crop.starts;
  return { planting: { ...ROOT_BED.planting, start, amount, ...given }, crop, bed: ROOT_BED.bed };
}

const rows = (count: number): Amount => ({ kind: "rows", count });
const plants = (count: number): Amount => ({ kind: "plants", count });
const feet = (count: number): Amount => ({ kind: "length", length: quantity(count, "ft") });

describe("a bed's layout", () => {
  const layout = (lengthIn: number, widthIn: number, apartIn: number, rowsIn = apartIn) =>
    rowLayoutOf({
      lengthCm: lengthIn * INCH,
      widthCm: widthIn * INCH,
      apartCm: apartIn * INCH,
      rowsCm: rowsIn * INCH,
    });

  test("of 4 by 8 ft at 12 in is four rows of eight, 32 in all", () => {
    expect(layout(96, 48, 12)).toEqual({ rows: 4, perRow: 8, plants: 32 });
  });

  test("has room for one row where the next would hang over the edge", () => {
    expect(layout(96, 23, 12)).toEqual({ rows: 1, perRow: 8, plants: 8 });
    expect(layout(96, 24, 12).rows).toBe(2);
  });

  test("has rows wider apart than the plants in them", () => {
    expect(layout(96, 48, 4, 12)).toEqual({ rows: 4, perRow: 24, plants: 96 });
  });

  test("is nothing in a bed narrower than a plant", () => {
    expect(layout(96, 11, 12)).toEqual({ rows: 0, perRow: 8, plants: 0 });
  });
});

describe("the length of row", () => {
  test("is rows times the bed's length", () => {
    expect(must(rowCm(some("carrot", rows(3)))) / 30.48).toBeCloseTo(36, 9);
  });

  test("is what the plan says, or plants at their spacing", () => {
    expect(must(rowCm(some("carrot", feet(10)))) / 30.48).toBeCloseTo(10, 9);
    expect(must(rowCm(some("cucumber", plants(4)))) / INCH).toBeCloseTo(48, 9);
  });

  test("is not known without an amount, or of rows in a bed of no length", () => {
    expect(rowCm(some("carrot", null))).toBeNull();
    expect(rowCm({ ...some("carrot", rows(3)), bed: null })).toBeNull();
  });
});

describe("plants in the end", () => {
  test("are those named, or the row at its last spacing", () => {
    expect(plantsOf(some("potato", plants(18)))).toBe(18);
    expect(plantsOf(some("carrot", rows(3)))).toBe((3 * 144) / 2);
    expect(plantsOf(some("bean", rows(2)))).toBe((2 * 144) / 4);
  });

  test("are not known where the plan does not say how much", () => {
    expect(plantsOf(some("carrot", null))).toBeNull();
  });
});

describe("the share hoped for", () => {
  test("is the table's, never under a quarter", () => {
    expect(expectedShare(ours("carrot"), celsius(50))).toBeCloseTo(0.93, 9);
    expect(expectedShare(ours("spinach"), celsius(95))).toBe(0.25);
  });

  test("is three in four where no table has the crop or its soil", () => {
    expect(expectedShare(ours("beet"), celsius(50))).toBe(0.75);
    expect(expectedShare(ours("cabbage"), celsius(95))).toBe(0.75);
  });
});

describe("how far apart seed is sown", () => {
  const apartIn = (key: string, soilF: number) =>
    must(sowApartCm(some(key, rows(1)), celsius(soilF))) / INCH;

  test("is the facts' middle where more come up than are to stand", () => {
    expect(apartIn("carrot", 50)).toBeCloseTo(0.5, 9);
    expect(apartIn("beet", 50)).toBeCloseTo(1.5, 9);
  });

  test("is thicker where fewer come up than are to stand", () => {
    expect(apartIn("bean", 59)).toBeCloseTo(4 * 0.97, 9);
    expect(apartIn("bean", 55)).toBeLessThan(2.5);
  });

  test("is nothing for what is never sown outdoors", () => {
    expect(sowApartCm(some("tomato", plants(6)), 20)).toBeNull();
  });
});

describe("seeds", () => {
  test("are as many as stand along the row, and a tenth", () => {
    expect(seedsFor(some("carrot", rows(3)), celsius(50))).toBe(Math.ceil(3 * 288 * 1.1));
  });

  test("are more in soil where fewer come up, never fewer", () => {
    const beans = (soilF: number) => must(seedsFor(some("bean", rows(2)), celsius(soilF)));
    expect(beans(59)).toBe(Math.ceil((72 / 0.97) * 1.1));
    expect(beans(55)).toBeGreaterThan(beans(59) * 1.5);
  });

  test("indoors are two to a cell, more where fewer than half come up, and a tenth", () => {
    expect(seedsFor(some("tomato", plants(6)), 21)).toBe(14);
    const parsley = some("parsley", plants(10), { start: "seed indoors" });
    expect(seedsFor(parsley, celsius(50))).toBe(22);
    expect(seedsFor(parsley, celsius(46))).toBe(Math.ceil(11 / ((0.63 * 5) / 9)));
  });

  test("are none of what is no seed, or where the plan does not say how much", () => {
    expect(seedsFor(some("potato", plants(18)), 10)).toBeNull();
    expect(seedsFor(some("cabbage", plants(6), { start: "plants" }), 10)).toBeNull();
    expect(seedsFor(some("carrot", null), 10)).toBeNull();
    expect(seedsFor(some("tomato", null), 21)).toBeNull();
  });
});

test("sixty cloves are about eight bulbs, of eight good cloves each, and a few still one", () => {
  expect([60, 12, 3, 130].map(bulbsFor)).toEqual([8, 2, 1, 16]);
});

test("numbers of seeds are said round and never short", () => {
  expect([1, 20, 21, 120, 300, 301, 1000, 1001].map(roundSeedCount)).toEqual([
    20, 20, 50, 200, 300, 500, 1000, 2000,
  ]);
});
