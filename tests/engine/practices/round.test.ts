import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf, plus, weekdayOf } from "../../../src/base/days/day.ts";
import { everyOtherSaturday } from "../../../src/engine/practices/round.ts";
import { isoDay } from "../../gardens.ts";

describe("every other Saturday", () => {
  test("is the last one on or before a day, a fortnight after the one before", () => {
    expect(isoOf(everyOtherSaturday(isoDay("2027-04-17")))).toBe("2027-04-17");
    expect(isoOf(everyOtherSaturday(isoDay("2027-04-30")))).toBe("2027-04-17");
    expect(isoOf(everyOtherSaturday(isoDay("2027-05-01")))).toBe("2027-05-01");
  });

  test("is a Saturday at most a fortnight back, before the year 2000 too", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 20_000 }), (on) => {
        const day = plus(isoDay("2000-01-01"), on);
        const round = everyOtherSaturday(day);
        return weekdayOf(round) === 6 && round <= day && round > day - 14;
      }),
    );
  });
});
