import { describe, expect, test } from "vitest";
import { plus } from "../../src/base/days/day.ts";
import { celsius } from "../../src/base/quantities/quantity.ts";
import { frostTonight } from "../../src/engine/beds/frost-tonight.ts";
import { needRank } from "../../src/engine/beds/night-needs.ts";
import type { Year } from "../../src/engine/year.ts";
import { drawnFor, samples } from "../depth.ts";
import { gardenOf, isoDay } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { anyPlan } from "./plans.ts";

const GARDENS = samples(30, 6);
const DAYS = Array.from({ length: 12 }, (_, i) => plus(isoDay("2027-03-20"), i * 21));
const LOWS = [50, 38, 36, 34, 32, 30, 29, 28, 26, 24, 20, 12, 0].map(celsius);

const years = (): readonly Year[] => {
  const roll = drawnFor(2029);
  return Array.from(
    { length: GARDENS },
    () => toldAt(gardenOf(anyPlan(roll)), dawn("2027-01-01")).year,
  );
};

/** What each planting and tray is told, by its name, on each night from warm to cold. */
const nights = once(() =>
  years().flatMap((year) =>
    DAYS.map((day) => ({ year, colder: LOWS.map((low) => frostTonight(year, day, low)) })),
  ),
);

describe("whatever the garden and the day, as a night gets colder", () => {
  test("the same plants stand in the same beds, in the order of the plan's beds", () => {
    for (const { year, colder } of nights()) {
      const standing = colder.map(({ beds }) =>
        beds.map(({ bed, plants }) => [bed, plants.map(({ planting }) => planting)]),
      );
      for (const each of standing)
        expect(each.map(([bed]) => bed)).toEqual(standing[0]?.map(([bed]) => bed));
      const order = [...(year.plans[0]?.beds ?? []).map(({ key }) => key), null];
      const places = (standing[0] ?? []).map(([bed]) => order.indexOf(bed as string | null));
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  test("no plant ever needs less, and what is left alone is left alone on every warmer night", () => {
    let asked = 0;
    for (const { colder } of nights()) {
      const byPlant = new Map<string, number[]>();
      for (const { beds } of colder)
        for (const { planting, need } of beds.flatMap(({ plants }) => plants))
          byPlant.set(planting, [...(byPlant.get(planting) ?? []), needRank(need)]);
      for (const [planting, ranks] of byPlant) {
        expect(ranks.length, planting).toBe(LOWS.length);
        expect(ranks, planting).toEqual([...ranks].sort((a, b) => a - b));
        if (ranks.some((rank) => rank > 0)) asked += 1;
      }
    }
    expect(asked).toBeGreaterThan((GARDENS * 20) / 3);
  });

  test("no tray that comes in stays out on a colder night", () => {
    let trays = 0;
    for (const { colder } of nights()) {
      const needs = colder.map((night) => night.trays.map(({ need }) => need !== "leave"));
      for (const [i] of (needs[0] ?? []).entries()) {
        const mine = needs.map((night) => night[i]);
        expect(mine).toEqual([...mine].sort((a, b) => Number(a) - Number(b)));
        trays += 1;
      }
    }
    expect(trays).toBeGreaterThan(GARDENS / 3);
  });
});
