import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/index.ts";
import { climateDataOf } from "../../../src/engine/climate/climate.ts";
import { driftK } from "../../../src/engine/climate/drift.ts";
import { isoDay, normalsOf, planOf, QUARRY } from "../../gardens.ts";

const TODAY = isoDay("2027-05-20");
const same = normalsOf(Array(12).fill(5), Array(12).fill(15));
const PLAN = { ...planOf(QUARRY), site: { ...planOf(QUARRY).site, normals: same } };

/** A site of 10 °C all year, with days known from so many days before today to so many after [°C]. */
function data(from: number, to: number, airC: (day: Day) => number) {
  const days = Array.from({ length: to - from + 1 }, (_, i) => plus(TODAY, from + i));
  const known = days.map((day) => [day, { lowC: airC(day) - 4, highC: airC(day) + 4 }] as const);
  return climateDataOf(PLAN, [], new Map(known));
}

describe("how much warmer the last weeks were", () => {
  test("is the mean of the four weeks before the day, and of nothing before or after", () => {
    const warm = data(-60, 9, (day) => (day < TODAY && day >= TODAY - 28 ? 12 : 30));
    expect(driftK(warm, TODAY)).toBeCloseTo(2);
  });

  test("is known once half of the days are", () => {
    expect(
      driftK(
        data(-14, 9, () => 8),
        TODAY,
      ),
    ).toBeCloseTo(-2);
    expect(
      driftK(
        data(-13, 9, () => 8),
        TODAY,
      ),
    ).toBeNull();
    expect(driftK(climateDataOf(PLAN, []), TODAY)).toBeNull();
  });
});
