import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { firstHigh } from "../../../src/engine/climate/first-high.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const climate = climateOf(planOf(QUARRY), []);
const [from, to] = [isoDay("2027-01-10"), isoDay("2027-12-31")];

describe("the first day of a high", () => {
  test("is the first of all days that reach it, whatever day one begins to look", () => {
    for (let ahead = 0; ahead < 9; ahead++) {
      const day = firstHigh(climate, { from: plus(from, ahead), to }, 13);
      expect(day).toBe(firstHigh(climate, { from, to }, 13));
      expect(climate.air(day ?? from).highC).toBeGreaterThanOrEqual(13);
      expect(climate.air(plus(day ?? from, -1)).highC).toBeLessThan(13);
    }
  });

  test("is the day one begins on where that is warm enough", () => {
    const july = isoDay("2027-07-01");
    expect(firstHigh(climate, { from: july, to }, 13)).toBe(july);
  });

  test("is found on the very last day, and is none past it", () => {
    const day = firstHigh(climate, { from, to }, 13) ?? from;
    expect(firstHigh(climate, { from, to: day }, 13)).toBe(day);
    expect(firstHigh(climate, { from, to: plus(day, -1) }, 13)).toBeNull();
    expect(firstHigh(climate, { from, to }, 60)).toBeNull();
  });
});
