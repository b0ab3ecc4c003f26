import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../src/base/days/day.ts";
import { curveThrough, monthlyMeans } from "../../src/engine/climate/air.ts";
import { climateOf } from "../../src/engine/climate/climate.ts";
import {
  type Bounds,
  dailyWarmth,
  dayWarmth,
  warmthBetween,
} from "../../src/engine/growth/warmth.ts";
import { isoDay, normalsOf, planOf, QUARRY } from "../gardens.ts";
import { csvOf, yamlOf } from "./read.ts";
import { hourlyMeans, SEATTLE } from "./stations.ts";
import { unlisted, watched } from "./watched.ts";

const COLUMNS: Readonly<Record<string, Bounds>> = {
  base_4_4: { baseC: 4.4, ceilingC: null },
  base_5: { baseC: 5, ceilingC: null },
  base_10: { baseC: 10, ceilingC: null },
  base_10_cap_30: { baseC: 10, ceilingC: 30 },
};

describe("degree days of Seattle's daily lows and highs", () => {
  const rows = csvOf("degree-days-from-daily-series.csv");

  test("are of 1,461 days without a gap", () => {
    const days = [...SEATTLE.keys()].sort((a, b) => a - b);
    expect(days).toHaveLength(1461);
    expect(days.every((day, i) => i === 0 || day === plus(days[i - 1] ?? day, 1))).toBe(true);
  });

  test("are six rows of the columns that stand here, in one series", () => {
    const heads = Object.keys(rows[0] ?? {}).filter((each) => each.startsWith("base"));
    expect(heads).toEqual(Object.keys(COLUMNS));
    expect(rows).toHaveLength(6);
    expect(new Set(rows.map(({ series }) => series))).toEqual(new Set(["vega:Seattle"]));
  });

  test.each(
    rows.flatMap((row) =>
      Object.entries(COLUMNS).map(
        ([column, bounds]) =>
          [`${row.year}, ${row.period}, ${column}`, { row, column, bounds }] as const,
      ),
    ),
  )("of %s are met to a tenth", (_, { row, column, bounds }) => {
    const daily = (day: Day) => {
      const air = SEATTLE.get(day);
      return air ? dayWarmth(air, bounds) : 0;
    };
    const [first = "", last = ""] = (row.period ?? "").split("..");
    const sum = warmthBetween(daily, isoDay(`${row.year}-${first}`), isoDay(`${row.year}-${last}`));
    expect(Math.abs(sum - Number(row[column]))).toBeLessThanOrEqual(0.1 + 1e-9);
  });
});

type Monthly = {
  readonly eccc_monthly_normals_brandon: {
    readonly tmean_c: readonly number[];
    readonly tmax_c: readonly number[];
    readonly tmin_c: readonly number[];
    readonly precip_mm: readonly number[];
    readonly gdd_above_5c: readonly number[];
    readonly gdd_above_10c: readonly number[];
    readonly gdd_above_0c: readonly number[];
    readonly note: { readonly text: string };
  };
  readonly seattle_monthly_mean_from_hourly_normals: { readonly tmean_c: readonly number[] };
};

/** What of the two blocks is not compared, and why. */
const NOT_COMPARED = {
  "eccc_monthly_normals_brandon.note.text": "Words.",
  "eccc_monthly_normals_brandon.precip_mm": "Rain is no warmth; it is watering's.",
};

const { eccc_monthly_normals_brandon: brandonRead, seattle_monthly_mean_from_hourly_normals } =
  yamlOf<Monthly>("frost-definitions.yaml");
const FILE = watched({
  eccc_monthly_normals_brandon: brandonRead,
  seattle_monthly_mean_from_hourly_normals,
});

/** The months of a row of twelve and the year, without the year. */
const months = (row: readonly number[]) => row.slice(0, 12);
const yearOf = (row: readonly number[]) => row[12] ?? Number.NaN;

describe("Brandon's monthly means", () => {
  const brandon = FILE.tree.eccc_monthly_normals_brandon;
  const normals = normalsOf(months(brandon.tmin_c), months(brandon.tmax_c));
  const climate = climateOf({ ...planOf(QUARRY), site: { ...planOf(QUARRY).site, normals } }, []);
  const DAYS = Array.from({ length: 365 }, (_, i) => plus(isoDay("2027-01-01"), i));

  test("come back from our curve, lows, highs and their mean", () => {
    const mean = (of: (day: Day) => number) =>
      monthlyMeans(Float64Array.from(DAYS, (day) => of(day)));
    const far = (ours: readonly number[], printed: readonly number[]) =>
      Math.max(...ours.map((each, m) => Math.abs(each - (printed[m] ?? Number.NaN))));
    expect(
      far(
        mean((day) => climate.air(day).lowC),
        months(brandon.tmin_c),
      ),
    ).toBeLessThan(0.01);
    expect(
      far(
        mean((day) => climate.air(day).highC),
        months(brandon.tmax_c),
      ),
    ).toBeLessThan(0.01);
    expect(far(mean(climate.airC), months(brandon.tmean_c))).toBeLessThan(0.11);
  });

  test("have the printed means of the year", () => {
    const middle = (row: readonly number[]) => months(row).reduce((a, b) => a + b, 0) / 12;
    for (const row of [brandon.tmean_c, brandon.tmax_c, brandon.tmin_c])
      expect(Math.abs(middle(row) - yearOf(row))).toBeLessThan(0.1);
  });

  test.each([
    [0, brandon.gdd_above_0c, 0.1],
    [5, brandon.gdd_above_5c, 0.1],
    [10, brandon.gdd_above_10c, 0.15],
  ])("give the year's degree days over %d °C within the published tolerance", (baseC, row, off) => {
    const daily = dailyWarmth(climate, { baseC, ceilingC: null }, 0);
    const sum = warmthBetween(daily, isoDay("2027-01-01"), isoDay("2027-12-31"));
    expect(Math.abs(sum / yearOf(row) - 1)).toBeLessThanOrEqual(off);
    const summer = [5, 6, 7].map((m) => row[m] ?? 0).reduce((a, b) => a + b, 0);
    const ours = warmthBetween(daily, isoDay("2027-06-01"), isoDay("2027-08-31"));
    expect(Math.abs(ours / summer - 1)).toBeLessThanOrEqual(0.02);
    const whole = months(row).reduce((a, b) => a + b, 0);
    expect(Math.abs(whole - yearOf(row))).toBeLessThan(0.5);
  });
});

describe("Seattle's hourly normals", () => {
  const { tmean_c } = FILE.tree.seattle_monthly_mean_from_hourly_normals;

  test("have the printed monthly means to the hundredth", () => {
    expect(hourlyMeans().map((each) => each.toFixed(2))).toEqual(
      [...tmean_c].map((each) => each.toFixed(2)),
    );
  });

  test("come back from our curve through them", () => {
    const means = hourlyMeans();
    const got = monthlyMeans(curveThrough(means));
    expect(got.every((each, m) => Math.abs(each - (means[m] ?? Number.NaN)) < 0.01)).toBe(true);
  });
});

test("every figure of both blocks is compared or listed", () => {
  expect(unlisted(FILE.unread(), NOT_COMPARED)).toEqual({ missing: [], idle: [] });
});
