import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Climate, climateOf } from "../../../src/engine/climate/climate.ts";
import { type SeasonWarmth, warmerK } from "../../../src/engine/growth/seasons.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const DAY = isoDay("2027-05-06");
const LANE = climateOf(planOf(QUARRY), []);
const spread = (spreadK: number): Climate => ({ ...LANE, spreadK: () => spreadK });

describe("how much warmer a season runs", () => {
  test("is nothing in the usual one", () => {
    expect(warmerK(LANE, "usual", DAY, 60)).toBe(0);
  });

  test("is what one month in ten is warmer by, over a month", () => {
    expect(warmerK(spread(1.5), "warm", DAY, 30)).toBe(2);
    expect(warmerK(spread(3), "warm", DAY, 30)).toBe(4);
  });

  test("is as much colder in the cold one", () => {
    expect(warmerK(LANE, "cold", DAY, 30)).toBe(-warmerK(LANE, "warm", DAY, 30));
  });

  test("is more over a fortnight and less over four months", () => {
    expect(warmerK(spread(1.5), "warm", DAY, 14)).toBe(2.5);
    expect(warmerK(spread(1.5), "warm", DAY, 120)).toBe(1.5);
  });

  test("over any span keeps the half that lasts: a quarter of the spread's square", () => {
    expect(warmerK(spread(100), "warm", DAY, 3000)).toBe(65);
    expect(warmerK(spread(100), "warm", DAY, 90)).toBe(90.5);
  });

  test("is the more, the less is known of the curve itself, over any span", () => {
    const rough: Climate = { ...spread(1.5), curveK: () => 2 };
    expect(warmerK(rough, "warm", DAY, 30)).toBe(3);
    expect(warmerK(rough, "cold", DAY, 30)).toBe(-3);
    expect(warmerK(rough, "warm", DAY, 3000)).toBeGreaterThanOrEqual(2.5);
  });

  test("over a few days is that of a week", () => {
    expect(warmerK(spread(1.5), "warm", DAY, 1)).toBe(warmerK(spread(1.5), "warm", DAY, 7));
  });

  test("is never nothing where years hardly differ", () => {
    expect(warmerK(spread(0.01), "warm", DAY, 300)).toBe(0.5);
    expect(warmerK(spread(0.01), "cold", DAY, 300)).toBe(-0.5);
  });

  test("goes by the spread in the middle of the span", () => {
    const july = isoDay("2027-07-01");
    const later: Climate = { ...LANE, spreadK: (day) => (day >= july ? 3 : 1.5) };
    expect(warmerK(later, "warm", july, 30)).toBe(4);
    expect(warmerK(later, "warm", isoDay("2027-05-01"), 30)).toBe(2);
    expect(warmerK(later, "warm", isoDay("2027-06-20"), 30)).toBe(4);
  });

  test("comes in half degrees, never wider over a longer span", () => {
    const days = fc.integer({ min: 1, max: 300 });
    const kind = fc.constantFrom<SeasonWarmth>("warm", "cold");
    fc.assert(
      fc.property(
        days,
        days,
        fc.double({ min: 0, max: 6, noNaN: true }),
        kind,
        (a, b, k, season) => {
          const [short, long] = [Math.min(a, b), Math.max(a, b)].map((span) =>
            Math.abs(warmerK(spread(k), season, DAY, span)),
          );
          return short !== undefined && long !== undefined && long <= short && (long * 2) % 1 === 0;
        },
      ),
    );
  });
});
