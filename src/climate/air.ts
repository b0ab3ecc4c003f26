import type { Site } from "../plan/plan.ts";

/** Days of a year the curve is drawn for; 29 February takes the value of the day before. */
export const YEAR = 365;

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const MONTH_STARTS = MONTH_DAYS.map((_, i) => MONTH_DAYS.slice(0, i).reduce((a, b) => a + b, 0));
const MIDDLES = MONTH_DAYS.map((days, i) => (MONTH_STARTS[i] ?? 0) + days / 2);
const ROUNDS = 12;

const at = (values: ArrayLike<number>, i: number): number => values[i] ?? 0;

/** Twelve values at the middles of the months, joined by a smooth periodic curve; one value a day. */
function through(values: readonly number[]): Float64Array {
  const curve = new Float64Array(YEAR);
  for (let m = 0; m < 12; m++) {
    const [a, b, c, d] = [
      at(values, (m + 11) % 12),
      at(values, m),
      at(values, (m + 1) % 12),
      at(values, (m + 2) % 12),
    ];
    const from = at(MIDDLES, m);
    const span = (at(MIDDLES, (m + 1) % 12) - from + YEAR) % YEAR || YEAR;
    for (let day = Math.ceil(from - 0.5); day + 0.5 < from + span; day++) {
      const t = (day + 0.5 - from) / span;
      curve[day % YEAR] =
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

/**
 * A rough curve [°C] for a site that gives no normals: a wave that passes 11 °C on the usual last and first
 * frost days and swings the wider the farther it lies from the equator. `lastFrost`, `firstFrost`: days of the
 * year, 0 to 364, null for a place without frost.
 * Source: house rule; 11 °C is what stations of NOAA's 1981-2010 normals have near those days, from memory.
 */
export function roughCurve(
  latitude: number | null,
  lastFrost: number | null,
  firstFrost: number | null,
): Float64Array {
  const south = latitude !== null && latitude < 0;
  const swing = Math.min(16, 0.3 * Math.abs(latitude ?? 45));
  const curve = new Float64Array(YEAR);
  if (lastFrost === null || firstFrost === null) {
    const peak = south ? 20 : 202;
    for (let i = 0; i < YEAR; i++)
      curve[i] = 20 + swing * Math.cos((2 * Math.PI * (i - peak)) / YEAR);
    return curve;
  }
  const length = (firstFrost - lastFrost + YEAR) % YEAR;
  const peak = lastFrost + length / 2;
  const middle = 11 - swing * Math.cos((Math.PI * length) / YEAR);
  for (let i = 0; i < YEAR; i++)
    curve[i] = middle + swing * Math.cos((2 * Math.PI * (i - peak)) / YEAR);
  return curve;
}

/**
 * Monthly mean temperatures [°C], January first, halfway between the normals' lows and highs, the lows less what
 * the garden is colder than its station; null without normals.
 */
export function meansOf(site: Site): readonly number[] | null {
  const { normals, colderBy } = site;
  const colder = colderBy?.si ?? 0;
  return normals ? normals.lowC.map((low, m) => (low - colder + at(normals.highC, m)) / 2) : null;
}
