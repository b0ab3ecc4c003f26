import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { type DailyAmount, firstDayReaching, sumBetween } from "../../../src/engine/growth/sums.ts";
import { isoDay } from "../../gardens.ts";

const DAY = isoDay("2027-05-06");

/** What each day from DAY on brings, in order; nothing before and after. */
const bringing =
  (amounts: readonly number[]): DailyAmount =>
  (day) =>
    amounts[day - DAY] ?? 0;

describe("what days bring together", () => {
  test("counts the first and the last", () => {
    expect(sumBetween(bringing([1, 2, 4, 8]), plus(DAY, 1), plus(DAY, 2))).toBe(6);
  });

  test("is nothing the wrong way round", () => {
    expect(sumBetween(() => 5, DAY, plus(DAY, -1))).toBe(0);
  });

  test("is the same whichever days were asked for before", () => {
    const daily = bringing(Array.from({ length: 400 }, (_, i) => i % 7));
    const fresh = (from: Day, to: Day) => sumBetween((day) => daily(day), from, to);
    const ends = fc.tuple(fc.integer({ min: -200, max: 500 }), fc.integer({ min: 0, max: 90 }));
    fc.assert(
      fc.property(fc.array(ends, { minLength: 1, maxLength: 12 }), (asked) =>
        asked.every(([on, days]) => {
          const [from, to] = [plus(DAY, on), plus(DAY, on + days)];
          return Math.abs(sumBetween(daily, from, to) - fresh(from, to)) < 1e-9;
        }),
      ),
    );
  });
});

describe("the first day that has brought enough", () => {
  test("is found by its end, the first day counted", () => {
    const daily = bringing([1, 2, 4, 8]);
    expect(firstDayReaching(daily, DAY, { wanted: 3, within: 9 })).toBe(plus(DAY, 1));
    expect(firstDayReaching(daily, DAY, { wanted: 4, within: 9 })).toBe(plus(DAY, 2));
  });

  test("is the last that is looked at, and none after it", () => {
    expect(firstDayReaching(() => 1, DAY, { wanted: 40, within: 40 })).toBe(plus(DAY, 39));
    expect(firstDayReaching(() => 1, DAY, { wanted: 41, within: 40 })).toBeNull();
  });

  test("is the same as adding day by day, wherever sums began", () => {
    const amounts = fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(amounts, fc.integer({ min: 1, max: 300 }), fc.nat(50), (each, wanted, on) => {
        const daily = bringing(each);
        firstDayReaching(daily, plus(DAY, on), { wanted, within: 90 });
        let sum = 0;
        const byHand = each.slice(0, 90).findIndex((amount) => {
          sum += amount;
          return sum >= wanted;
        });
        const found = firstDayReaching(daily, DAY, { wanted, within: 90 });
        return found === (byHand < 0 ? null : plus(DAY, byHand));
      }),
    );
  });
});
