import { describe, expect, test } from "vitest";
import { plus } from "../../src/base/days/day.ts";
import type { NumberRange } from "../../src/crops/facts.ts";
import { ALL_DAY, hardeningLadder } from "../../src/engine/practices/ladder.ts";
import { isoDay } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { degrees, must, ours } from "./ours.ts";
import { type Held, missed, spanOf, within, yamlOf } from "./read.ts";

type Hardening = {
  readonly maryland: {
    readonly start_weeks_before_planting: NumberRange;
    readonly tender_not_out_below_f: number;
    readonly cucumber_melon_overnight_only_if_not_below_f: number;
  };
  readonly beltrami_minnesota: {
    readonly day1_hours: NumberRange;
    readonly increase_hours_per_day: NumberRange;
    readonly overnight_f: number;
  };
  readonly hennepin_minnesota: {
    readonly day1_hours: number;
    readonly total_days: number;
    readonly tomato_pepper_react_below_f: number;
  };
  readonly crop_minimum_outdoor_f: Readonly<Record<string, readonly string[] | string>>;
  readonly typical_schedule: {
    readonly days: NumberRange;
    readonly days_longest: number;
    readonly hours_by_day: Readonly<Record<string, string>>;
  };
};

const FILE = yamlOf<Hardening>("hardening-off.yaml");
const OUT = isoDay("2027-05-21");
const LADDER = hardeningLadder(OUT, must(ours("tomato").indoors).hardenDays.value, () => true);
const hours = (rung: number) => Number(LADDER[rung - 1]?.out) / 60;
const floor = (key: string) => degrees(must(ours(key).indoors).nightFloorC.value);

/** The floor of a crop in the list by classes: `half_hardy_45`, `warmest_60_65`. */
function listed(key: string): NumberRange {
  const found = Object.entries(FILE.crop_minimum_outdoor_f).find(
    ([, crops]) => typeof crops !== "string" && crops.includes(key),
  );
  return spanOf(must(found)[0].match(/\d+/g)?.map(Number) ?? []);
}

const one = (value: number): NumberRange => [value, value];

const HELD: readonly Held[] = [
  within("first day, Beltrami", [one(hours(1)), FILE.beltrami_minnesota.day1_hours], 0),
  within("first day, Hennepin", [one(hours(1)), one(FILE.hennepin_minnesota.day1_hours)], 0),
  within(
    "an hour more a day, Beltrami",
    [one(hours(2) - hours(1)), FILE.beltrami_minnesota.increase_hours_per_day],
    0,
  ),
  within("tomato floor, Maryland", [floor("tomato"), one(FILE.maryland.tender_not_out_below_f)], 5),
  within("tomato floor, Beltrami", [floor("tomato"), one(FILE.beltrami_minnesota.overnight_f)], 5),
  within(
    "tomato floor, Hennepin",
    [floor("tomato"), one(FILE.hennepin_minnesota.tomato_pepper_react_below_f)],
    5,
  ),
  within("tomato floor, list from memory", [floor("tomato"), listed("tomato")], 5),
  within(
    "cucumber floor, Maryland",
    [floor("cucumber"), one(FILE.maryland.cucumber_melon_overnight_only_if_not_below_f)],
    0,
  ),
  ...["cucumber", "lettuce", "cabbage", "parsley"].map((key) =>
    within(`${key} floor, list from memory`, [floor(key), listed(key)], 5),
  ),
];

describe("published hardening off", () => {
  test("begins, rises and leaves plants out at night as ours, but for the misses told", () => {
    expect(missed(HELD)).toEqual(missesOf("hardening-off.yaml"));
  });

  test("lasts one to two weeks in all, as ours", () => {
    const [least, most] = FILE.maryland.start_weeks_before_planting;
    for (const key of ["tomato", "lettuce", "cucumber", "cabbage", "parsley"]) {
      const days = must(ours(key).indoors).hardenDays.value;
      expect(days).toBeGreaterThanOrEqual(least * 7);
      expect(days).toBeLessThanOrEqual(most * 7);
      expect(days).toBeGreaterThanOrEqual(FILE.typical_schedule.days[0]);
      expect(days).toBeLessThanOrEqual(FILE.typical_schedule.days_longest);
      expect(days).toBeLessThanOrEqual(FILE.hennepin_minnesota.total_days);
    }
  });

  test("gives the hours of days 1 to 6 that ours has", () => {
    for (const day of [1, 2, 3, 4, 5, 6]) {
      const [least, most] = spanOf(FILE.typical_schedule.hours_by_day[day] ?? "");
      expect(hours(day)).toBeGreaterThanOrEqual(least);
      expect(hours(day)).toBeLessThanOrEqual(most);
    }
  });

  test("is all day on day 7 and out at night by days 8 to 10, as ours", () => {
    expect(FILE.typical_schedule.hours_by_day["7"]).toBe("all day");
    expect(LADDER[6]?.out).toBe(ALL_DAY);
    const [, last] = spanOf(Object.keys(FILE.typical_schedule.hours_by_day).at(-1) ?? "");
    expect(LADDER[last - 1]?.out).toBe("night");
  });

  test("ends on setting-out day: the last night is the one before", () => {
    expect(LADDER.at(-1)?.day).toBe(plus(OUT, -1));
  });

  test("is compared block by block", () => {
    expect(Object.keys(FILE)).toEqual([
      "maryland",
      "beltrami_minnesota",
      "hennepin_minnesota",
      "crop_minimum_outdoor_f",
      "typical_schedule",
    ]);
  });
});
