import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { bareSoil, usualAirC, usualSoil } from "../../../src/engine/climate/bare-soil.ts";
import { isoDay } from "../../gardens.ts";

const flat = (value: number) => Array<number>(365).fill(value);
/** Air of 10 °C, and soil that the sun has two degrees warmer, on every day. */
const USUAL = { lowC: flat(5), highC: flat(15), soilC: flat(12) };
const DAY = isoDay("2027-05-01");
const known = new Map(Array.from({ length: 5 }, (_, on) => [plus(DAY, on), null] as const));
const warmed = bareSoil(USUAL, known, (day, warmerK = 0) => (known.has(day) ? 21 : 10 + warmerK));

describe("bare soil", () => {
  test("is its curve where no day is known, and as much warmer as the season is", () => {
    expect(usualSoil(USUAL)(DAY, 0)).toBe(12);
    expect(bareSoil(USUAL, new Map(), () => 10)(DAY, 1.5)).toBe(13.5);
    expect(usualAirC(USUAL, DAY)).toBe(10);
  });

  test("is warmer than usual by the mean of eleven days' air, and keeps what the sun adds", () => {
    expect([0, 4, 10].map((on) => Math.round(warmed(plus(DAY, on), 0) * 100) / 100)).toEqual([
      13, 17, 17,
    ]);
  });

  test("is its curve again once the known days are ten days past", () => {
    expect(warmed(plus(DAY, 14), 0)).toBeCloseTo(13, 9);
    expect(warmed(plus(DAY, 15), 0)).toBe(12);
    expect(warmed(plus(DAY, -1), 0)).toBe(12);
  });

  test("is warmer by the season on the days among the eleven that are not known", () => {
    expect(warmed(plus(DAY, 4), 2)).toBeCloseTo(17 + (6 * 2) / 11, 9);
  });
});
