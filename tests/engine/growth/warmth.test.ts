import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { COOL_WARMTH, WARM_WARMTH } from "../../../src/crops/figures.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import {
  boundsOf,
  dailyWarmth,
  dayWarmth,
  MOST_DAYS,
  packetWarmth,
  reachedOn,
  warmthBetween,
} from "../../../src/engine/growth/warmth.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const DAY = isoDay("2027-05-06");
const OPEN = { baseC: 5, ceilingC: null };
const CAPPED = { baseC: 10, ceilingC: 30 };

describe("a crop's bounds", () => {
  test("are its base and its ceiling, null where it has none", () => {
    expect(boundsOf(WARM_WARMTH)).toEqual({ baseC: 10, ceilingC: 30 });
    expect(boundsOf({ ...WARM_WARMTH, ceilingC: null }).ceilingC).toBeNull();
  });
});

describe("a day's warmth", () => {
  test("is what the mean of low and high lies above the base", () => {
    expect(dayWarmth({ lowC: 4, highC: 18 }, OPEN)).toBe(6);
  });

  test("is never less than none", () => {
    expect(dayWarmth({ lowC: -8, highC: 4 }, OPEN)).toBe(0);
    expect(dayWarmth({ lowC: -8, highC: 4 }, CAPPED)).toBe(0);
  });

  test("with a ceiling counts a cold night as the base and a hot noon as the ceiling", () => {
    expect(dayWarmth({ lowC: 2, highC: 20 }, CAPPED)).toBe(5);
    expect(dayWarmth({ lowC: 20, highC: 38 }, CAPPED)).toBe(15);
    expect(dayWarmth({ lowC: 33, highC: 38 }, CAPPED)).toBe(20);
  });

  test("is never less on a warmer day, nor more than from base to ceiling", () => {
    const at = fc.double({ min: -30, max: 45, noNaN: true });
    const more = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(at, more, more, fc.constantFrom(OPEN, CAPPED), (lowC, swing, warmer, bounds) => {
        const cool = dayWarmth({ lowC, highC: lowC + swing }, bounds);
        const warm = dayWarmth({ lowC: lowC + warmer, highC: lowC + swing + warmer }, bounds);
        const most = bounds.ceilingC === null ? 60 : bounds.ceilingC - bounds.baseC;
        return cool <= warm + 1e-9 && warm <= most + 1e-9;
      }),
    );
  });
});

describe("a packet's warmth", () => {
  test("is its days at the warmth it takes for granted, 20 °F over the base", () => {
    expect(packetWarmth(60, COOL_WARMTH)).toBeCloseTo((60 * 20) / 1.8, 9);
  });
});

describe("the warmth of any day of a climate", () => {
  const climate = climateOf(planOf(QUARRY), []);

  test("is that of its air", () => {
    expect(dailyWarmth(climate, OPEN, 0)(DAY)).toBe(dayWarmth(climate.air(DAY), OPEN));
  });

  test("is that of the warmer air in a warm season, and of other bounds by those", () => {
    expect(dailyWarmth(climate, OPEN, 2)(DAY)).toBe(dayWarmth(climate.air(DAY, 2), OPEN));
    expect(dailyWarmth(climate, CAPPED, 2)(DAY)).toBe(dayWarmth(climate.air(DAY, 2), CAPPED));
    expect(dailyWarmth(climate, OPEN, 2)(DAY)).not.toBe(dailyWarmth(climate, OPEN, 0)(DAY));
  });

  test("is not mistaken for that of another climate", () => {
    const other = climateOf(planOf(QUARRY), [], new Map([[DAY, { lowC: 20, highC: 30 }]]));
    expect(dailyWarmth(other, OPEN, 0)(DAY)).toBe(20);
  });
});

describe("the day a warmth has come together", () => {
  const ten = () => 10;

  test("is the first by whose end it has, the first day counted", () => {
    expect(reachedOn(ten, DAY, 30)).toBe(plus(DAY, 2));
    expect(reachedOn(ten, DAY, 31)).toBe(plus(DAY, 3));
    expect(reachedOn(ten, DAY, 0)).toBe(DAY);
  });

  test("waits through days without any", () => {
    expect(reachedOn((day) => (day < plus(DAY, 20) ? 0 : 10), DAY, 20)).toBe(plus(DAY, 21));
  });

  test("is none where a year does not bring it", () => {
    expect(reachedOn(ten, DAY, 10 * MOST_DAYS)).toBe(plus(DAY, MOST_DAYS - 1));
    expect(reachedOn(ten, DAY, 10 * MOST_DAYS + 1)).toBeNull();
    expect(reachedOn(() => 0, DAY, 1)).toBeNull();
  });

  test("is where the warmth between ends that brought it", () => {
    const daily = dailyWarmth(climateOf(planOf(QUARRY), []), boundsOf(COOL_WARMTH), 0);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 150 }),
        fc.integer({ min: 1, max: 300 }),
        (on, wanted) => {
          const from = plus(DAY, on);
          const day = reachedOn(daily, from, wanted);
          if (day === null) return warmthBetween(daily, from, plus(from, MOST_DAYS - 1)) < wanted;
          const before = warmthBetween(daily, from, plus(day, -1));
          return before < wanted && warmthBetween(daily, from, day) >= wanted - 1e-6;
        },
      ),
    );
  });
});

describe("the warmth between two days", () => {
  test("counts both", () => {
    expect(warmthBetween(() => celsius(50), DAY, plus(DAY, 2))).toBe(30);
    expect(warmthBetween(() => 7, DAY, DAY)).toBe(7);
  });

  test("is none the wrong way round", () => {
    expect(warmthBetween(() => 7, DAY, plus(DAY, -1))).toBe(0);
  });
});
