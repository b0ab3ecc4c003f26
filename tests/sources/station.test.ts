import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dayFromIso } from "../../src/base/days/day.ts";
import { deviationsAt } from "../../src/engine/climate/normal.ts";
import {
  dayNumberOf,
  firstNights,
  lastNights,
  quantile,
  type SearchedYear,
} from "../../src/garden/station/record.ts";
import { stationOf } from "../garden/station/files.ts";
import { isoDay } from "../gardens.ts";
import { csvOf, yamlOf } from "./read.ts";

const FILE = new URL("../../node_modules/vega-datasets/data/weather.csv", import.meta.url);
const SEATTLE = stationOf(readFileSync(FILE, "utf8"), {
  where: [{ column: "location", value: "Seattle" }],
});

const ROWS = csvOf("frost-dates-from-daily-series.csv");

/** What our search of the winter found for a row's year and temperature. */
function found(row: Readonly<Record<string, string>>, side: "last" | "first") {
  const search = { atMostC: Number(row.threshold_c), south: false };
  const nights = side === "last" ? lastNights : firstNights;
  return nights(SEATTLE.days, search).find(({ year }) => year === Number(row.year))?.night;
}

const numbered = (iso: string | undefined, year: string | undefined) =>
  dayNumberOf(isoDay(iso ?? ""), Number(year));

describe("Seattle's days of 2012 to 2015, as its station's file has them", () => {
  test("are 1,461 without a gap, in °C by their highs", () => {
    expect(SEATTLE.days).toHaveLength(1461);
    expect([SEATTLE.unit, SEATTLE.unitBy]).toEqual(["°C", "values"]);
    expect(SEATTLE.days.every(({ lowC, highC }) => lowC !== null && highC !== null)).toBe(true);
  });

  test("are four years of two temperatures in the published dates", () => {
    expect(ROWS).toHaveLength(8);
    expect(new Set(ROWS.map(({ series }) => series))).toEqual(new Set(["vega:Seattle"]));
  });

  test("have each published last freeze on the very day, all eight", () => {
    for (const row of ROWS) expect(found(row, "last")).toBe(numbered(row.last_freeze, row.year));
  });

  test("have each published first freeze on the very day, the seven there are", () => {
    const dated = ROWS.filter((row) => row.first_freeze !== "");
    expect(dated).toHaveLength(7);
    for (const row of dated) expect(found(row, "first")).toBe(numbered(row.first_freeze, row.year));
  });

  test("have in January what the table, which ends with December, has not", () => {
    const none = ROWS.filter((row) => row.first_freeze === "");
    expect(none.map((row) => [row.year, found(row, "first")])).toEqual([["2012", 366]]);
    expect(dayFromIso("2013-01-01")).toBe(isoDay("2012-12-31") + 1);
  });
});

type Percentiles = Readonly<Record<string, number>>;
type Block = {
  readonly series: string;
  readonly threshold_c: number;
  readonly complete_years: number;
  readonly last: Percentiles;
  readonly first: Percentiles;
};

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const deviation = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + (v - mean(values)) ** 2, 0) / (values.length - 1));

/** Hyndman and Fan's definition 7, which is not ours. */
function type7(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const position = (sorted.length - 1) * share;
  const [below = 0, above = 0] = [sorted[Math.floor(position)], sorted[Math.ceil(position)]];
  return below + (position % 1) * (above - below);
}

describe("percentiles of those dates", () => {
  const blocks = yamlOf<readonly Block[]>("frost-date-percentiles.yaml");
  const dates = (searched: readonly SearchedYear[]) =>
    searched.flatMap(({ night }) => (typeof night === "number" ? [night] : []));

  test("are one block of four years at freezing", () => {
    expect(
      blocks.map(({ series, threshold_c, complete_years }) => [
        series,
        threshold_c,
        complete_years,
      ]),
    ).toEqual([["vega:Seattle", 0, 4]]);
  });

  for (const [side, nights] of [
    ["last", lastNights],
    ["first", firstNights],
  ] as const)
    for (const block of blocks) {
      const ours = dates(nights(SEATTLE.days, { atMostC: block.threshold_c, south: false }));
      const theirs = block[side];

      test(`of the ${side} are ours by definition 6, to a tenth of a day`, () => {
        expect(ours).toHaveLength(theirs.n ?? 0);
        for (const percent of [10, 50, 90])
          expect(quantile(ours, percent / 100)).toBeCloseTo(theirs[`type6_${percent}`] ?? 0, 1);
      });

      test(`of the ${side} have our mean and standard deviation`, () => {
        expect(mean(ours)).toBeCloseTo(theirs.mean ?? 0, 1);
        expect(deviation(ours)).toBeCloseTo(theirs.sd ?? 0, 2);
      });

      test(`of the ${side} are other ones by definition 7 and by a fitted normal, and less careful or more`, () => {
        for (const percent of [10, 50, 90])
          expect(type7(ours, percent / 100)).toBeCloseTo(theirs[`type7_${percent}`] ?? 0, 1);
        for (const percent of [10, 90]) {
          const fitted = mean(ours) + deviationsAt(percent / 100) * deviation(ours);
          expect(fitted).toBeCloseTo(theirs[`normal_${percent}`] ?? 0, 1);
          const [six = 0, seven = 0] = [theirs[`type6_${percent}`], theirs[`type7_${percent}`]];
          expect(percent === 10 ? six < seven : six > seven).toBe(true);
        }
      });

      test(`of the ${side} leave no figure of the block unread`, () => {
        expect(Object.keys(theirs).sort()).toEqual(
          [
            "mean",
            "sd",
            "n",
            "normal_10",
            "normal_90",
            ...[6, 7].flatMap((type) => [10, 50, 90].map((p) => `type${type}_${p}`)),
          ].sort(),
        );
      });
    }
});
