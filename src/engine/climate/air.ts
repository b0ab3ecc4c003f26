import { DAYS_IN_YEAR } from "../../base/index.ts";
import type { Site } from "../../garden/model/index.ts";

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const MONTH_STARTS = MONTH_DAYS.map((_, i) => MONTH_DAYS.slice(0, i).reduce((a, b) => a + b, 0));
/** The middle of each month, January first, in days from the turn of the year. */
export const MIDDLES: readonly number[] = MONTH_DAYS.map(
  (days, i) => (MONTH_STARTS[i] ?? 0) + days / 2,
);
const ROUNDS = 12;

/** Twelve monthly values, January first, on a day of the year, 0 to 364: a month's own in its middle, straight between two middles. */
export function monthlyValueOn(values: readonly number[], dayOfTheYear: number): number {
  const along = dayOfTheYear + 0.5;
  const before = MIDDLES.findLastIndex((middle) => middle <= along);
  const [from, to] = [(before + 12) % 12, (before + 1) % 12];
  const since = (along - at(MIDDLES, from) + DAYS_IN_YEAR) % DAYS_IN_YEAR;
  const span = (at(MIDDLES, to) - at(MIDDLES, from) + DAYS_IN_YEAR) % DAYS_IN_YEAR;
  return at(values, from) + ((at(values, to) - at(values, from)) * since) / span;
}

const at = (values: ArrayLike<number>, i: number): number => values[i] ?? 0;

/** Twelve values at the middles of the months, joined by a smooth periodic curve; one value a day. */
function through(values: readonly number[]): Float64Array {
  const curve = new Float64Array(DAYS_IN_YEAR);
  for (let m = 0; m < 12; m++) {
    const [a, b, c, d] = [
      at(values, (m + 11) % 12),
      at(values, m),
      at(values, (m + 1) % 12),
      at(values, (m + 2) % 12),
    ];
    const from = at(MIDDLES, m);
    const span = (at(MIDDLES, (m + 1) % 12) - from + DAYS_IN_YEAR) % DAYS_IN_YEAR || DAYS_IN_YEAR;
    for (let day = Math.ceil(from - 0.5); day + 0.5 < from + span; day++) {
      const t = (day + 0.5 - from) / span;
      curve[day % DAYS_IN_YEAR] =
        b + (t / 2) * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }
  }
  return curve;
}

/** The mean of the curve over each month, January first. */
export function monthlyMeans(curve: Float64Array): readonly number[] {
  return MONTH_DAYS.map((days, m) => {
    let sum = 0;
    for (let i = 0; i < days; i++) sum += at(curve, at(MONTH_STARTS, m) + i);
    return sum / days;
  });
}

/**
 * Mean air temperature [°C] of each day of a year, 1 January first, from twelve monthly means, January first:
 * a smooth curve whose monthly means are the given ones again, to a hundredth of a degree.
 */
export function curveThrough(means: readonly number[]): Float64Array {
  let values = means;
  let curve = through(values);
  for (let round = 0; round < ROUNDS; round++) {
    const got = monthlyMeans(curve);
    values = values.map((value, m) => value + at(means, m) - at(got, m));
    curve = through(values);
  }
  return curve;
}

/** Lows and highs [°C] of each day of a year, 1 January first. */
export type AirCurves = { readonly lowC: Float64Array; readonly highC: Float64Array };

/** Lows and highs through the site's normals, the lows less what the garden is colder than its station; null without normals. */
export function airCurvesOf(site: Site): AirCurves | null {
  const { normals, colderBy } = site;
  if (!normals) return null;
  const colder = colderBy?.si ?? 0;
  return {
    lowC: curveThrough(normals.lowC.map((low) => low - colder)),
    highC: curveThrough(normals.highC),
  };
}
