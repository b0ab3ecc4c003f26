import * as v from "valibot";
import { describe, expect, it } from "vitest";
import {
  CheckedPlanSchema,
  PLANTING_KEY_NAMES,
  WeatherSchema,
  WrittenPlanSchema,
} from "../../../src/garden/plan/shape.ts";

const place = { clock: "America/Denver", "last frost": "none", "first frost": "none" };
const plan = (rest: object) => ({ garden: "x", year: 2027, place, ...rest });
const fits = (shape: v.GenericSchema, value: unknown) => v.safeParse(shape, value).success;

describe("the shape of a plan file", () => {
  it("has the least plan, as written and as checked", () => {
    expect(fits(WrittenPlanSchema, plan({}))).toBe(true);
    expect(fits(CheckedPlanSchema, plan({}))).toBe(true);
  });

  it("lets a crop be written as word, phrase or keys, and checks it as keys alone", () => {
    for (const crop of [
      "carrot",
      { carrot: "3 rows" },
      { carrot: null },
      { crop: "carrot", rows: 3 },
    ])
      expect(fits(WrittenPlanSchema, plan({ crops: [crop] }))).toBe(true);
    expect(fits(CheckedPlanSchema, plan({ crops: ["carrot"] }))).toBe(false);
    expect(fits(CheckedPlanSchema, plan({ crops: [{ crop: "carrot", rows: 3 }] }))).toBe(true);
  });

  it("refuses keys it does not have, fractions of plants and words for numbers", () => {
    expect(fits(CheckedPlanSchema, plan({ colour: "red" }))).toBe(false);
    expect(fits(CheckedPlanSchema, plan({ crops: [{ crop: "carrot", rows: 2.5 }] }))).toBe(false);
    expect(fits(CheckedPlanSchema, plan({ crops: [{ crop: "carrot", rows: "three" }] }))).toBe(
      false,
    );
  });

  it("has weather as two lists of numbers", () => {
    expect(fits(WeatherSchema, { low: [1], high: [2], in: "°C" })).toBe(true);
    expect(fits(WeatherSchema, { low: [1] })).toBe(false);
    expect(fits(WeatherSchema, { low: [1], high: [2], latitude: 47.45 })).toBe(true);
    expect(fits(WeatherSchema, { low: [1], high: [2], latitude: 91 })).toBe(false);
  });

  it("names each key of a planting once", () => {
    expect(new Set(PLANTING_KEY_NAMES).size).toBe(PLANTING_KEY_NAMES.length);
  });
});
