import { describe, expect, test } from "vitest";
import { chanceOfFrostAfter, firstFrostAt, lastFrostAt } from "../../src/climate/frost.ts";
import { type Day, plus } from "../../src/days/day.ts";
import type { FrostDates } from "../../src/plan/plan.ts";
import { isoDay, planOf, QUARRY } from "../gardens.ts";
import { csvOf, yamlOf } from "./read.ts";

type Chances = Readonly<Record<number, string>>;
type Delaware = {
  readonly delaware_rec: {
    readonly spring_chance_after: Readonly<Record<number, Chances>>;
    readonly fall_chance_before: Readonly<Record<number, Chances>>;
  };
};

const { delaware_rec } = yamlOf<Delaware>("frost-definitions.yaml");
const SPRING = delaware_rec.spring_chance_after[32] ?? {};
const FALL = delaware_rec.fall_chance_before[32] ?? {};

const on = (monthDay: string | undefined) => isoDay(`2027-${monthDay?.replace("/", "-")}`);
const dates = (early: Day, usual: Day, late: Day): FrostDates => ({
  early,
  usual,
  late,
  given: 3,
});
const chances = (row: Chances) =>
  Object.entries(row).map(([percent, day]) => ({ share: Number(percent) / 100, day: on(day) }));

describe("Delaware's chances of 32 °F, from the dates at 10, 50 and 90 %", () => {
  const spring = dates(on(SPRING[90]), on(SPRING[50]), on(SPRING[10]));
  const fall = dates(on(FALL[10]), on(FALL[50]), on(FALL[90]));

  test("are five dates in spring and five in autumn", () => {
    expect(Object.keys(SPRING)).toEqual(["10", "33", "50", "67", "90"]);
    expect(Object.keys(FALL)).toEqual(["10", "33", "50", "67", "90"]);
  });

  test("come back in spring within a day, all five", () => {
    for (const { share, day } of chances(SPRING))
      expect(Math.abs(lastFrostAt(spring, share) - day)).toBeLessThanOrEqual(1);
  });

  test("come back in autumn within a day, all five", () => {
    for (const { share, day } of chances(FALL))
      expect(Math.abs(firstFrostAt(fall, share) - day)).toBeLessThanOrEqual(1);
  });

  test("are the chances we tell after those days, within three in a hundred", () => {
    for (const { share, day } of chances(SPRING))
      expect(Math.abs(chanceOfFrostAfter(spring, day) - share)).toBeLessThan(0.03);
  });
});

describe("the 50 stations of NOAA's 1981-2010 normals", () => {
  const stations = csvOf("ncei-normals-1981-2010.csv").map((row) => {
    const first = on(row.first32_p50);
    const firstLate = on(row.first32_p90);
    return {
      name: row.name ?? "",
      lastUsual: on(row.last32_p50),
      lastEarly: on(row.last32_p90),
      first,
      firstLate: firstLate < first ? plus(firstLate, 365) : firstLate,
    };
  });
  const middleTwo = (values: readonly number[]) => [...values].sort((a, b) => a - b).slice(24, 26);

  test("are fifty", () => {
    expect(stations).toHaveLength(50);
  });

  test("give the EARLY date as the 90 % last freeze and the LATE one as the 90 % first freeze", () => {
    expect(stations.filter((each) => each.lastEarly >= each.lastUsual)).toEqual([]);
    expect(stations.filter((each) => each.firstLate <= each.first)).toEqual([]);
  });

  test("give their 90 % last freeze back as a risk of 9 in 10, and never as a safe date", () => {
    for (const { lastEarly, lastUsual } of stations) {
      const ours = dates(lastEarly, lastUsual, plus(lastUsual, 15));
      expect(lastFrostAt(ours, 0.9)).toBe(lastEarly);
      expect(lastFrostAt(ours, 0.1)).toBeGreaterThan(lastUsual);
      expect(chanceOfFrostAfter(ours, lastEarly)).toBeCloseTo(0.9, 3);
    }
  });

  test("give their 90 % first freeze back as the share of 9 in 10 autumns", () => {
    for (const { first, firstLate } of stations)
      expect(firstFrostAt(dates(plus(first, -15), first, firstLate), 0.9)).toBe(firstLate);
  });

  test("lie 15 to 16 days between usual and early in the middle, as one date in a plan is spread", () => {
    expect(middleTwo(stations.map((each) => each.lastUsual - each.lastEarly))).toEqual([15, 16]);
    const { lastFrost } = planOf(QUARRY.replace("20 Apr, 6 May, 21 May", "about 6 May")).site;
    expect(lastFrost && lastFrost.usual - lastFrost.early).toBe(15);
  });
});
