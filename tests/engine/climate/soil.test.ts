import { describe, expect, test } from "vitest";
import { SOIL_AVERAGES_DAYS, soilCurve } from "../../../src/engine/climate/soil.ts";

const yearOf = (air: (day: number) => number) =>
  Float64Array.from({ length: 365 }, (_, i) => air(i));

describe("a year of soil", () => {
  test("is the air's own where that never changes", () => {
    const soil = soilCurve(yearOf(() => 14));
    expect(soil).toHaveLength(365);
    expect([...soil].every((each) => Math.abs(each - 14) < 1e-9)).toBe(true);
  });

  test("is the mean of eleven days' air, the day's own among them", () => {
    expect(SOIL_AVERAGES_DAYS).toBe(11);
    const soil = soilCurve(yearOf((day) => day));
    expect(soil[100]).toBe(95);
  });

  test("feels one warm day for eleven days and no longer", () => {
    const soil = soilCurve(yearOf((day) => (day === 100 ? 22 : 0)));
    expect([99, 100, 110, 111].map((day) => soil[day])).toEqual([0, 2, 2, 0]);
  });

  test("goes round the year, the first days after the last", () => {
    const soil = soilCurve(yearOf((day) => (day === 364 ? 11 : 0)));
    expect([364, 0, 9, 10].map((day) => soil[day])).toEqual([1, 1, 1, 0]);
  });

  test("goes below freezing here, for freezing is held later", () => {
    expect(soilCurve(yearOf(() => -9))[0]).toBeCloseTo(-9, 9);
  });
});
