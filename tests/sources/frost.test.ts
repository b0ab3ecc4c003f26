import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus, sayDay } from "../../src/base/days/day.ts";
import { chanceOfFrostAfter, firstFrostAt, lastFrostAt } from "../../src/engine/climate/frost.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import type { FrostDates } from "../../src/garden/model/plan.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { isoDay, planOf, QUARRY } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { csvOf, missed, within, yamlOf } from "./read.ts";

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

const rows = csvOf("ncei-normals-1981-2010.csv");

describe("the 50 stations of NOAA's 1981-2010 normals", () => {
  const stations = rows.map((row) => {
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
    expect(middleTwo(stations.map((each) => each.firstLate - each.first))).toEqual([15, 15]);
    const { lastFrost } = planOf(QUARRY.replace("20 Apr, 6 May, 21 May", "about 6 May")).site;
    expect(lastFrost && lastFrost.usual - lastFrost.early).toBe(15);
  });

  test("have a date in every cell, and two whose late first freeze lies in January after", () => {
    const columns = ["last32_p50", "last32_p90", "first32_p50", "first32_p90"];
    const cells = rows.flatMap((row) => columns.map((column) => row[column] ?? ""));
    expect(cells).toHaveLength(200);
    expect(cells.filter((cell) => !/^\d\d\/\d\d$/.test(cell))).toEqual([]);
    const wrapped = rows.filter((row) => (row.first32_p90 ?? "") < (row.first32_p50 ?? ""));
    expect(wrapped.map(({ name }) => name)).toEqual([
      "HOUSTON HOBBY AP",
      "SACRAMENTO EXECUTIVE AP",
    ]);
  });
});

/** A station's dates as a weather file has them; the side that NOAA's two figures do not give is as wide as the other. */
function weatherOf(row: Readonly<Record<string, string>>): string {
  const said = (monthDay: string | undefined) => sayDay(on(monthDay));
  const other = (usual: string | undefined, far: string | undefined) => {
    const gap = (((on(usual) - on(far) + 547) % 365) - 182) as number;
    return sayDay(plus(on(usual), gap));
  };
  const last = [said(row.last32_p90), said(row.last32_p50), other(row.last32_p50, row.last32_p90)];
  const first = [
    other(row.first32_p50, row.first32_p90),
    said(row.first32_p50),
    said(row.first32_p90),
  ];
  const twelve = (value: number) => `[${Array.from({ length: 12 }, () => value).join(", ")}]`;
  return `low: ${twelve(4)}\nhigh: ${twelve(14)}\nin: °C\nlast frost: [${last}]\nfirst frost: [${first}]\n`;
}

/** The site of a plan that leaves its frost dates to the station. */
function siteOf(row: Readonly<Record<string, string>>) {
  const text = `garden: x\nyear: 2027\nplace:\n  clock: UTC\n  latitude: ${row.lat}\n  weather: w.yaml\n`;
  const at = { garden: "x", file: "2027.yaml", beside: { "w.yaml": weatherOf(row) } };
  const { plan, problems } = readPlan(text, at, PRACTICES);
  if (plan === null) throw new Error(JSON.stringify(problems));
  return plan.site;
}

describe("the 50 stations as weather files", () => {
  const sites = rows.map((row) => ({ row, ...siteOf(row) }));

  test("make a plan's frost dates, early by the 90 % last and late by the 90 % first freeze", () => {
    expect(sites).toHaveLength(50);
    for (const { row, lastFrost, firstFrost } of sites) {
      expect(lastFrost && isoOf(lastFrost.usual)).toBe(`2027-${row.last32_p50?.replace("/", "-")}`);
      expect(lastFrost && isoOf(lastFrost.early).slice(5)).toBe(row.last32_p90?.replace("/", "-"));
      expect(firstFrost && isoOf(firstFrost.usual)).toBe(
        `2027-${row.first32_p50?.replace("/", "-")}`,
      );
      expect(firstFrost && isoOf(firstFrost.late).slice(5)).toBe(
        row.first32_p90?.replace("/", "-"),
      );
    }
  });

  test("put Houston's late first freeze in the January after", () => {
    const houston = sites.find(({ row }) => row.name === "HOUSTON HOBBY AP");
    expect(houston?.firstFrost && isoOf(houston.firstFrost.late)).toBe("2028-01-20");
  });

  test("have a season between the usual dates within five days of the published length, but for the misses", () => {
    const compared = sites.map(({ row, lastFrost, firstFrost }) => {
      const ours = (firstFrost?.usual ?? 0) - (lastFrost?.usual ?? 0);
      const days = Number(row.gsl32_p50_days);
      return within(
        `season of ${row.name}`,
        [
          [ours, ours],
          [days, days],
        ],
        5,
      );
    });
    expect(missed(compared)).toEqual(missesOf("ncei-normals-1981-2010.csv"));
  });
});
