import { describe, expect, test } from "vitest";
import { dayOfYear } from "../../../src/base/days/day.ts";
import { monthlyMeans } from "../../../src/engine/climate/air.ts";
import { ONE_IN_TEN } from "../../../src/engine/climate/normal.ts";
import { LOW_ON_FROST_DATE, roughAir } from "../../../src/engine/climate/rough-air.ts";
import { CLIMATES, planAt, type StationClimate, type Told } from "../../sources/climates.ts";

const airAt = (station: StationClimate, told: Told) => roughAir(planAt(station, told).site);
const known = CLIMATES.filter(({ frosts }) => frosts !== null);
const named = (part: string) => {
  const found = CLIMATES.find(({ name }) => name.includes(part));
  if (!found) throw new Error(part);
  return found;
};

/** How far each month's mean is off the station's own [K], January first. */
function offBy(station: StationClimate, told: Told): readonly number[] {
  const { lowC, highC } = airAt(station, told);
  const [lows, highs] = [monthlyMeans(lowC), monthlyMeans(highC)];
  return lows.map(
    (low, m) => (low + (highs[m] ?? 0) - (station.lowC[m] ?? 0) - (station.highC[m] ?? 0)) / 2,
  );
}

/** The share of stations' months that lie within what is said of nine in ten either way. */
function inside(stations: readonly StationClimate[], told: Told): number {
  const all = stations.flatMap((station) => {
    const { curveK } = airAt(station, told);
    return offBy(station, told).map((off, m) => Math.abs(off) <= ONE_IN_TEN * (curveK[m] ?? 0));
  });
  return all.filter(Boolean).length / all.length;
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);

describe("a rough year", () => {
  test("passes through both temperatures where the plan has them, at each of 38 stations", () => {
    for (const station of CLIMATES) {
      const { lowC, highC } = airAt(station, "two numbers");
      const off = [
        Math.max(...monthlyMeans(highC)) - Math.max(...station.highC),
        Math.min(...monthlyMeans(lowC)) - Math.min(...station.lowC),
      ];
      expect(Math.max(...off.map(Math.abs)), station.name).toBeLessThan(0.9);
    }
  });

  test("has about the low of real stations on its frost dates", () => {
    for (const station of known) {
      const { lastFrost, firstFrost } = planAt(station, "frost dates").site;
      if (!lastFrost || !firstFrost) continue;
      const { lowC } = airAt(station, "frost dates");
      for (const { usual } of [lastFrost, firstFrost])
        expect(
          Math.abs((lowC[dayOfYear(usual)] ?? 0) - LOW_ON_FROST_DATE.meanC),
          station.name,
        ).toBeLessThan(2 * LOW_ON_FROST_DATE.sdK);
    }
  });

  test("is as wide as real stations with such frost dates are: four months in five lie inside", () => {
    expect(known.length).toBeGreaterThan(25);
    expect(inside(known, "frost dates")).toBeGreaterThan(0.7);
    expect(inside(CLIMATES, "two numbers")).toBeGreaterThan(0.75);
  });

  test("is some three degrees off in July by frost dates alone, and one with two numbers", () => {
    const summer = (stations: readonly StationClimate[], told: Told) =>
      rms(stations.map((each) => offBy(each, told)[each.latitude < 0 ? 0 : 6] ?? 0));
    expect(summer(known, "frost dates")).toBeLessThan(3);
    expect(summer(CLIMATES, "two numbers")).toBeLessThan(1);
  });

  test("is half as wide in summer with both numbers, and least about the frost dates", () => {
    const [wide, narrow] = [
      airAt(named("Bismarck"), "frost dates").curveK,
      airAt(named("Bismarck"), "two numbers").curveK,
    ];
    expect(narrow[6]).toBeLessThan((wide[6] ?? 0) / 1.5);
    expect(Math.min(...wide)).toBeLessThan((wide[6] ?? 0) / 1.2);
  });

  test("has its summer in January in the south, with frost dates and without", () => {
    for (const station of [named("Canberra"), named("Perth")]) {
      const highs = monthlyMeans(airAt(station, "frost dates").highC);
      expect(highs.indexOf(Math.max(...highs))).toBe(0);
    }
  });

  test("has highs above its lows whatever is said", () => {
    for (const station of CLIMATES)
      for (const told of ["frost dates", "two numbers"] as const) {
        const { lowC, highC } = airAt(station, told);
        expect(lowC.every((low, day) => low < (highC[day] ?? 0))).toBe(true);
      }
  });
});
