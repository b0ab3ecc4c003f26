import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { curveThrough, meansOf, monthlyMeans, roughCurve, YEAR } from "../../src/climate/air.ts";
import { planOf, QUARRY } from "../gardens.ts";

/** Monthly means at the lane [°C], halfway between its lows and highs. */
const MEANS = [-6.4, -4.2, 0.6, 5.3, 10, 14.4, 18.6, 17.5, 12.5, 6.1, -0.8, -5.8];

const twelve = (min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: 12, maxLength: 12 });

const farthest = (means: readonly number[]) =>
  Math.max(
    ...monthlyMeans(curveThrough(means)).map((got, m) => Math.abs(got - (means[m] ?? Number.NaN))),
  );

describe("the air curve through twelve monthly means", () => {
  test("has a value for each of 365 days", () => {
    expect(curveThrough(MEANS)).toHaveLength(365);
    expect(YEAR).toBe(365);
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
    const steps = [...curve].map((each, i) => Math.abs((curve[(i + 1) % YEAR] ?? 0) - each));
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
    const rising = Float64Array.from({ length: YEAR }, (_, day) => day);
    expect(monthlyMeans(rising)[0]).toBe(15);
    expect(monthlyMeans(rising)[1]).toBe(44.5);
    expect(monthlyMeans(rising)[11]).toBe(349);
  });
});

describe("the rough curve of a site without normals", () => {
  const at = (curve: Float64Array, day: number) => curve[day] ?? Number.NaN;

  test("passes 11 °C on the usual last and first frost days", () => {
    const curve = roughCurve(46.6, 125, 274);
    expect(at(curve, 125)).toBeCloseTo(11, 6);
    expect(at(curve, 274)).toBeCloseTo(11, 6);
  });

  test("is warmest halfway between them", () => {
    const curve = [...roughCurve(46.6, 125, 275)];
    expect(curve.indexOf(Math.max(...curve))).toBe(200);
  });

  test("swings the wider the farther from the equator, to 16 K at the most", () => {
    const swing = (latitude: number) => {
      const curve = [...roughCurve(latitude, null, null)];
      return (Math.max(...curve) - Math.min(...curve)) / 2;
    };
    expect(swing(20)).toBeCloseTo(6, 2);
    expect(swing(40)).toBeCloseTo(12, 2);
    expect(swing(60)).toBeCloseTo(16, 2);
  });

  test("is warmest in January in the south, where there is no frost to go by", () => {
    const curve = [...roughCurve(-33, null, null)];
    expect(curve.indexOf(Math.max(...curve))).toBe(20);
  });

  test("knows a southern summer from its frost dates, across New Year", () => {
    const curve = [...roughCurve(-43, 280, 110)];
    expect(curve.indexOf(Math.max(...curve))).toBe(12);
  });

  test("takes 45 degrees where no latitude is given", () => {
    expect([...roughCurve(null, 125, 274)]).toEqual([...roughCurve(45, 125, 274)]);
  });
});

describe("a site's monthly means", () => {
  test("lie halfway between its lows and highs", () => {
    const means = meansOf(planOf(QUARRY).site);
    expect(means?.map((each) => Math.round(each * 10) / 10)).toEqual([
      -6.4, -4.2, 0.6, 5.3, 10, 14.4, 18.6, 17.5, 12.5, 6.1, -0.8, -5.8,
    ]);
  });

  test("are none where the plan gives no normals", () => {
    expect(meansOf({ ...planOf(QUARRY).site, normals: null })).toBeNull();
  });
});
