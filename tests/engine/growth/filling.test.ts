import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bagLifts, mixForBags, mixLitres, soilLitres } from "../../../src/engine/growth/filling.ts";

const INCH = 2.54;
const FOOT = 0.3048;

describe("soil for a bed", () => {
  const bed = (feet: readonly [number, number], deepIn: number) =>
    soilLitres(feet[0] * feet[1] * FOOT ** 2, deepIn * INCH);

  test.each([
    [[4, 8], 6, 453],
    [[4, 8], 8, 604],
    [[4, 8], 12, 906],
    [[3, 6], 10, 425],
  ] as const)(
    "of %s ft by %s in deep is %s litres and a tenth for settling",
    (feet, deep, litres) => {
      expect(bed(feet, deep) / 1.1 / litres).toBeCloseTo(1, 2);
    },
  );

  test("is none where it is not deep", () => {
    expect(bed([4, 8], 0)).toBe(0);
  });
});

test("compost for two trays of cells and one of pots is twelve litres and a tenth", () => {
  expect(mixLitres({ cells: 2, pots: 1 })).toBeCloseTo(13.2, 9);
  expect(mixLitres({ cells: 0, pots: 0 })).toBe(0);
});

const lifts = (highIn: number, startIn = 8, rimIn = 1) =>
  bagLifts({ count: 6, acrossCm: 16 * INCH, highCm: highIn * INCH }, startIn * INCH, rimIn * INCH);

describe("the lifts that fill a bag", () => {
  test("of 14 inches begun with 8 are three inches and two, an inch under the rim", () => {
    expect(lifts(14).map((lift) => lift.inches)).toEqual([3, 2]);
  });

  test("take eleven litres a bag for three inches, a tenth for settling in it", () => {
    expect(lifts(14)[0]?.litresABag).toBeCloseTo(
      ((Math.PI / 4) * 40.64 ** 2 * 7.62 * 1.1) / 1000,
      9,
    );
    expect(lifts(14)[0]?.litresABag).toBeCloseTo(10.87, 2);
    expect(lifts(14)[0]?.litresAll).toBeCloseTo(65.24, 2);
  });

  test("are none where the start fills the bag", () => {
    expect(lifts(9)).toEqual([]);
    expect(lifts(6)).toEqual([]);
  });

  const bags = fc.record({
    highIn: fc.integer({ min: 4, max: 40 }),
    acrossIn: fc.integer({ min: 6, max: 40 }),
    startIn: fc.integer({ min: 4, max: 10 }),
    rimIn: fc.integer({ min: 1, max: 2 }),
    count: fc.integer({ min: 1, max: 40 }),
  });
  const filled = ({
    highIn,
    acrossIn,
    startIn,
    rimIn,
    count,
  }: typeof bags extends fc.Arbitrary<infer Bag> ? Bag : never) =>
    bagLifts(
      { count, acrossCm: acrossIn * INCH, highCm: highIn * INCH },
      startIn * INCH,
      rimIn * INCH,
    );

  test("of any bag add up to the bag less start and rim, in whole inches of one to four", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const high = filled(bag).map((lift) => lift.inches);
        const sum = high.reduce((a, b) => a + b, 0);
        const whole = high.every((each) => Number.isInteger(each) && each >= 1 && each <= 4);
        return whole && sum === Math.max(0, bag.highIn - bag.startIn - bag.rimIn);
      }),
    );
  });

  test("of any bag are as even as whole inches let them be, the bigger first", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const high = filled(bag).map((lift) => lift.inches);
        const falling = high.every((each, i) => each <= (high[i - 1] ?? 4));
        return falling && (high.length === 0 || Math.max(...high) - Math.min(...high) <= 1);
      }),
    );
  });

  test("of any bag take litres in step with their inches, for one and for all", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const litresPerInch = ((Math.PI / 4) * (bag.acrossIn * INCH) ** 2 * INCH * 1.1) / 1000;
        return filled(bag).every(
          (lift) =>
            Math.abs(lift.litresABag - lift.inches * litresPerInch) < 1e-9 &&
            Math.abs(lift.litresAll - lift.litresABag * bag.count) < 1e-6,
        );
      }),
    );
  });
});

test("all the mix of a bag is the first layer and every lift, to just under its rim", () => {
  const bags = { count: 6, acrossCm: 16 * INCH, highCm: 14 * INCH };
  const whole = soilLitres((Math.PI / 4) * (0.16 * 2.54) ** 2, 13 * INCH) * 6;
  expect(mixForBags(bags, 8 * INCH, INCH)).toBeCloseTo(whole, 9);
  expect(mixForBags({ ...bags, highCm: 6 * INCH }, 8 * INCH, INCH)).toBeCloseTo(
    (whole * 6) / 13,
    9,
  );
});
