import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DAYS_IN_YEAR } from "../../../src/base/days/day.ts";
import { quantity } from "../../../src/base/quantities/quantity.ts";
import { airCurvesOf, curveThrough, monthlyMeans } from "../../../src/engine/climate/air.ts";
import { planOf, QUARRY } from "../../gardens.ts";

/** Monthly means at the lane [°C], halfway between its lows and highs. */
const MEANS = [-6.4, -4.2, 0.6, 5.3, 10, 14.4, 18.6, 17.5, 12.5, 6.1, -0.8, -5.8];

const { site } = planOf(QUARRY);

const twelve = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });

const farthest = (means: readonly number[]) =>
  Math.max(
    ...monthlyMeans(curveThrough(means)).map((got, m) => Math.abs(got - (means[m] ?? Number.NaN))),
  );

describe("the air curve through twelve monthly means", () => {
  test("has a value for each of 365 days", () => {
    expect(curveThrough(MEANS)).toHaveLength(365);
  });

  test("gives the twelve means back to a hundredth of a degree", () => {
    expect(farthest(MEANS)).toBeLessThan(0.01);
  });

  test("gives any year's means back to a hundredth of a degree", () => {
    fc.assert(fc.property(twelve(-30, 38), (means) => farthest(means) < 0.01));
  });

  test("is flat where every month is alike", () => {
    expect([...curveThrough(Array(12).fill(14))].every((each) => Math.abs(each - 14) < 1e-9)).toBe(
      true,
    );
  });

  test("takes no step of more than a degree from one day to the next, New Year too", () => {
    const curve = curveThrough(MEANS);
    const steps = [...curve].map((each, i) =>
      Math.abs((curve[(i + 1) % DAYS_IN_YEAR] ?? 0) - each),
    );
    expect(Math.max(...steps)).toBeLessThan(1);
  });

  test("is warmest in July and coldest in January at the lane", () => {
    const curve = [...curveThrough(MEANS)];
    expect(curve.indexOf(Math.max(...curve))).toBe(203);
    expect(curve.indexOf(Math.min(...curve))).toBe(1);
  });
});

describe("the monthly means of a curve", () => {
  test("are taken over each month's own days", () => {
    const rising = Float64Array.from({ length: DAYS_IN_YEAR }, (_, day) => day);
    expect(monthlyMeans(rising)[0]).toBe(15);
    expect(monthlyMeans(rising)[1]).toBe(44.5);
    expect(monthlyMeans(rising)[11]).toBe(349);
  });
});

describe("a site's lows and highs", () => {
  test("have the months' means that the plan gives", () => {
    const air = airCurvesOf(site);
    const rounded = (curve: Float64Array | undefined) =>
      curve && monthlyMeans(curve).map((each) => Math.round((each * 9) / 5 + 32));
    expect(rounded(air?.lowC)).toEqual([11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]);
    expect(rounded(air?.highC)).toEqual([30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]);
  });

  test("are colder at night, and no other way, in a garden colder than its station", () => {
    const colder = airCurvesOf({ ...site, colderBy: quantity(9, "°F", true) });
    const plain = airCurvesOf(site);
    expect(plain?.lowC[130]).toBeDefined();
    expect(colder?.lowC[130]).toBeCloseTo((plain?.lowC[130] ?? 0) - 5, 9);
    expect(colder?.highC).toEqual(plain?.highC);
  });

  test("are none where the plan gives no normals", () => {
    expect(airCurvesOf({ ...site, normals: null })).toBeNull();
  });
});
