import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import {
  coolSeasonStart,
  firstCoolDay,
  firstMildNight,
  hasCoolSeason,
} from "../../../src/engine/growth/cool-season.ts";
import { isoDay } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { growingOf } from "./growing.ts";

const CROPS = [
  "broccoli: 8 plants",
  "lettuce: 2 rows",
  "carrot: 2 rows",
  "spinach: 2 rows",
  "pea: 2 rows",
  "onion: 80 plants, bought",
  "garlic: 60 cloves",
  "potato: 8 tubers",
  "tomato: 3 plants",
  "bush beans: 2 rows",
  "artichoke: 4 plants, in since 1 Oct 2025",
  "strawberry: 20 plants, in since 1 Oct 2025",
];
const MILD = withCrops("mediterranean", CROPS);
const SEEDS_IN = (key: string) => `${key}/sow-outdoors/1`;
/** The same year with its months half a year later, south of the equator. */
const MIRRORED = MILD.replace("latitude: 36.8", "latitude: -36.8")
  .replace(
    "low: [7.6, 8.2, 9.8, 11.1, 14.2, 17.9, 20.5, 21.0, 18.9, 15.3, 11.4, 8.9]",
    "low: [20.5, 21.0, 18.9, 15.3, 11.4, 8.9, 7.6, 8.2, 9.8, 11.1, 14.2, 17.9]",
  )
  .replace(
    "high: [16.9, 17.6, 19.6, 21.4, 24.6, 28.3, 30.5, 30.8, 28.2, 24.1, 20.1, 17.6]",
    "high: [30.5, 30.8, 28.2, 24.1, 20.1, 17.6, 16.9, 17.6, 19.6, 21.4, 24.6, 28.3]",
  )
  .replace(/in since 1 Oct 2025/g, "in since 1 Apr 2026");

describe("a place without frost and with a hot summer", () => {
  const days = dueDays(MILD);

  test("sows and sets out cool crops as the heat goes, for autumn and winter", () => {
    for (const id of ["broccoli/set-out/1", SEEDS_IN("lettuce"), SEEDS_IN("carrot")])
      expect(due(days, id), id).toMatch(/^2027-(09-2|10-0)/);
    expect(due(days, SEEDS_IN("spinach"))).toMatch(/^2027-10-/);
    expect(due(days, "broccoli/harvest/1")).toMatch(/^2027-1[12]-/);
  });

  test("lets pulses and bulbs wait till it is cool, and bulbs are lifted after spring has come", () => {
    for (const id of [SEEDS_IN("pea"), "onion/set-out/1", "garlic/overwinter/plant"])
      expect(due(days, id), id).toMatch(/^2027-1(0-2|1-)/);
    expect(due(days, "onion/harvest/1")).toMatch(/^2028-05-/);
    expect(due(days, "garlic/harvest/1")).toMatch(/^2028-0[56]-/);
  });

  test("keeps spring for potatoes, and for warm crops once nights are mild", () => {
    expect(due(days, "potato/plant/1")).toMatch(/^2027-01-/);
    expect(due(days, "tomato/set-out/1")).toMatch(/^2027-03-/);
    expect(due(days, SEEDS_IN("bean"))).toMatch(/^2027-03-/);
  });

  test("picks what stands for years, counted from the equinox, and closes no bed", () => {
    expect(due(days, "strawberry/harvest/1")).toMatch(/^2027-0[45]-/);
    expect(due(days, "artichoke/harvest/1")).toMatch(/^2027-03-/);
    expect(Object.keys(days).filter((id) => id.includes("close-the-bed"))).toEqual([]);
  });

  test("has no sign of a frost that never comes", () => {
    const garlic = growingOf(MILD, "garlic");
    const day = firstCoolDay(garlic);
    expect(day && isoOf(day)).toMatch(/^2027-1[01]-/);
  });

  test("is mirrored south of the equator", () => {
    const south = dueDays(MIRRORED, "2027-07-02");
    expect(due(south, "broccoli/set-out/1")).toMatch(/^2028-0[34]-/);
    expect(due(south, "tomato/set-out/1")).toMatch(/^2027-09-/);
    expect(due(south, "garlic/overwinter/plant")).toMatch(/^2028-0[45]-/);
  });
});

describe("the season of cool crops", () => {
  const at = (text: string, key: string) => growingOf(text, key);
  const always = () => true;

  test("is only where winter is mild and summer hot", () => {
    expect(hasCoolSeason(at(MILD, "lettuce"))).toBe(true);
    for (const garden of ["cold", "maritime"])
      expect(hasCoolSeason(at(withCrops(garden, CROPS), "lettuce")), garden).toBe(false);
  });

  test("is none for tender crops, tubers, what stands for years, or a month of the gardener's own", () => {
    for (const key of ["tomato", "potato", "strawberry"])
      expect(coolSeasonStart(at(MILD, key), always), key).toBeNull();
    const asked = withCrops("mediterranean", ["lettuce: 1 row, sow this March"]);
    expect(coolSeasonStart(at(asked, "lettuce"), always)).toBeNull();
    expect(coolSeasonStart(at(MILD, "lettuce"), always)).not.toBeNull();
  });

  test("begins on the first day that nothing speaks against", () => {
    const lettuce = at(MILD, "lettuce");
    const first = coolSeasonStart(lettuce, always) ?? 0;
    expect(coolSeasonStart(lettuce, (day) => day > first + 9)).toBe(first + 10);
    expect(coolSeasonStart(lettuce, () => false)).toBe(first);
  });

  test("has mild nights for a tender crop from the first day whose mean low is its floor", () => {
    const tomato = at(MILD, "tomato");
    const day = firstMildNight(tomato);
    const least = tomato.crop.indoors?.nightFloorC.value ?? 0;
    expect(tomato.climate.air(day).lowC).toBeGreaterThanOrEqual(least);
  });
});

describe("a year whose weather is known", () => {
  const context = growingOf(MILD, "lettuce");
  const from = isoDay("2027-01-01");
  const known = (warmerK: (day: Day) => number) => {
    const days = Array.from({ length: 365 }, (_, on) => plus(from, on));
    const { air } = context.climate;
    const weather = days.map((day) => {
      const { lowC, highC } = air(day);
      return [day, { lowC: lowC + warmerK(day), highC: highC + warmerK(day) }] as const;
    });
    return { ...context, climate: climateOf(context.plan, [], new Map(weather)) };
  };
  const startIn = (warmerK: (day: Day) => number) =>
    coolSeasonStart(known(warmerK), () => true) ?? 0;
  const usual = coolSeasonStart(context, () => true) ?? 0;

  test("has its season of cool crops whatever cold spell its winter had", () => {
    const snap = known((day) => (day < plus(from, 20) ? -8 : 0));
    expect(hasCoolSeason(context)).toBe(true);
    expect(hasCoolSeason(snap)).toBe(true);
  });

  test("begins later as the heat stays, sooner as it goes, and not on one cool day of August", () => {
    expect(startIn(() => 3)).toBeGreaterThan(usual + 3);
    expect(startIn(() => -3)).toBeLessThan(usual - 3);
    const cool = isoDay("2027-08-20");
    expect(startIn((day) => (day === cool ? -12 : 0))).toBeGreaterThan(cool);
  });
});
