import * as v from "valibot";
import { describe, expect, it } from "vitest";
import { Checked, PLANTING_KEY_NAMES, Weather, Written } from "../../../src/garden/plan/shape.ts";

const place = { clock: "America/Denver", "last frost": "none", "first frost": "none" };
const plan = (rest: object) => ({ garden: "x", year: 2027, place, ...rest });
const fits = (shape: v.GenericSchema, value: unknown) => v.safeParse(shape, value).success;

describe("the shape of a plan file", () => {
  it("holds the least plan, as written and as checked", () => {
    expect(fits(Written, plan({}))).toBe(true);
    expect(fits(Checked, plan({}))).toBe(true);
  });

  it("lets a crop be written as word, phrase or keys, and checks it as keys alone", () => {
    for (const crop of [
      "carrot",
      { carrot: "3 rows" },
      { carrot: null },
      { crop: "carrot", rows: 3 },
    ])
      expect(fits(Written, plan({ crops: [crop] }))).toBe(true);
    expect(fits(Checked, plan({ crops: ["carrot"] }))).toBe(false);
    expect(fits(Checked, plan({ crops: [{ crop: "carrot", rows: 3 }] }))).toBe(true);
  });

  it("refuses keys it does not have, fractions of plants and words for numbers", () => {
    expect(fits(Checked, plan({ colour: "red" }))).toBe(false);
    expect(fits(Checked, plan({ crops: [{ crop: "carrot", rows: 2.5 }] }))).toBe(false);
    expect(fits(Checked, plan({ crops: [{ crop: "carrot", rows: "three" }] }))).toBe(false);
  });

  it("holds weather as two lists of numbers", () => {
    expect(fits(Weather, { low: [1], high: [2], in: "°C" })).toBe(true);
    expect(fits(Weather, { low: [1] })).toBe(false);
    expect(fits(Weather, { low: [1], high: [2], latitude: 47.45 })).toBe(true);
    expect(fits(Weather, { low: [1], high: [2], latitude: 91 })).toBe(false);
  });

  it("names each key of a planting once", () => {
    expect(new Set(PLANTING_KEY_NAMES).size).toBe(PLANTING_KEY_NAMES.length);
  });
});
