import { dayOrThrow, monthStart, partsOf } from "../../base/index.ts";
import type { DailyRecord } from "./record.ts";
import { likelySpreadK } from "./spread.ts";

/**
 * The share of a month's days that must have a value. Source: house rule, as common in national normals: four days in
 * five.
 */
const DAYS_THERE = 0.8;

/** The least years of a month for a spread. Source: house rule: two years say nothing about it. */
const YEARS_FOR_SPREAD = 3;

/**
 * A record's months, January first: means of daily lows and highs [°C], rain of the month [mm], and the spread of the
 * month's mean from year to year [K] by likelySpreadK. A month that no year has complete is null; `rainMm` is null
 * where a month has no rain recorded, `spreadK` where any month has under three years.
 */
export type MonthlyNormals = {
  readonly lowC: readonly (number | null)[];
  readonly highC: readonly (number | null)[];
  readonly rainMm: readonly number[] | null;
  readonly spreadK: readonly number[] | null;
  /** Months of the record that were left out because under four days in five have values. */
  readonly leftOut: number;
};

type Month = {
  readonly month: number;
  readonly lowC: number | null;
  readonly highC: number | null;
  readonly rainMm: number | null;
};

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** The mean of the known values, or null where under four days in five have one. */
function meanOf(values: readonly (number | null)[], days: number): number | null {
  const there = values.filter((value) => value !== null);
  return there.length >= DAYS_THERE * days ? mean(there) : null;
}

function monthsOf(series: readonly DailyRecord[]): readonly Month[] {
  const byMonth = new Map<string, DailyRecord[]>();
  for (const daily of series) {
    const { year, month } = partsOf(daily.day);
    const key = `${year}/${month}`;
    byMonth.set(key, [...(byMonth.get(key) ?? []), daily]);
  }
  return [...byMonth].map(([key, dailies]) => {
    const [year = 0, month = 0] = key.split("/").map(Number);
    const days = monthStart(dayOrThrow(year, month, 1), 1) - dayOrThrow(year, month, 1);
    const rain = meanOf(
      dailies.map(({ rainMm }) => rainMm),
      days,
    );
    return {
      month,
      lowC: meanOf(
        dailies.map(({ lowC }) => lowC),
        days,
      ),
      highC: meanOf(
        dailies.map(({ highC }) => highC),
        days,
      ),
      rainMm: rain === null ? null : rain * days,
    };
  });
}

/** Standard deviation (n - 1), drawn towards the usual spread, more so the fewer years there are. */
function spreadOf(values: readonly number[]): number | null {
  const years = values.length;
  if (years < YEARS_FOR_SPREAD) return null;
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  return likelySpreadK(Math.sqrt(squares / (years - 1)), years);
}

/** All twelve, or null where one is missing. */
function whole(values: readonly (number | null)[]): readonly number[] | null {
  const there = values.filter((value) => value !== null);
  return there.length === values.length ? there : null;
}

/**
 * The months of a record in day order, gaps allowed. Each month of each year counts once, if four in five of its days
 * have values.
 */
export function monthlyNormalsOf(series: readonly DailyRecord[]): MonthlyNormals {
  const months = monthsOf(series);
  const each = (value: (month: Month) => number | null) =>
    Array.from({ length: 12 }, (_, i) =>
      months
        .filter(({ month }) => month === i + 1)
        .map(value)
        .filter((one) => one !== null),
    );
  const means = (value: (month: Month) => number | null) =>
    each(value).map((years) => (years.length === 0 ? null : mean(years)));
  const middle = ({ lowC, highC }: Month) =>
    lowC === null || highC === null ? null : (lowC + highC) / 2;
  return {
    lowC: means(({ lowC }) => lowC),
    highC: means(({ highC }) => highC),
    rainMm: whole(means(({ rainMm }) => rainMm)),
    spreadK: whole(each(middle).map(spreadOf)),
    leftOut: months.filter((month) => middle(month) === null).length,
  };
}
