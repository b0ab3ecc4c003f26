import { type Day, plus } from "../../base/index.ts";

/** What each day adds: warmth, or a share of the way to emergence; never negative. */
export type DailyAmount = (day: Day) => number;

/** Sums of daily values from a first day on: `upTo[i]` is the sum of the days before `first + i`. */
type Sums = { first: Day; upTo: number[] };

/** Sums cached by their daily values, so that no day is calculated twice. */
const known = new WeakMap<DailyAmount, Sums>();

/** Days before the first one needed that are summed with it, so that sums seldom have to begin again. */
const AHEAD = 30;

/** Sums that begin on that day or before it. */
function sumsFrom(daily: DailyAmount, from: Day): Sums {
  const old = known.get(daily);
  if (old && old.first <= from) return old;
  const sums = { first: plus(from, -AHEAD), upTo: [0] };
  known.set(daily, sums);
  return sums;
}

/** The sum of the days before that one, from the first of the sums on. */
function sumBefore(day: number, daily: DailyAmount, { first, upTo }: Sums): number {
  for (let i = upTo.length; i <= day - first; i++)
    upTo.push((upTo[i - 1] ?? 0) + daily(plus(first, i - 1)));
  return upTo[day - first] ?? 0;
}

/** The sum of the days from the first to the last, both inclusive; 0 where they are the wrong way round. */
export function sumBetween(daily: DailyAmount, first: Day, last: Day): number {
  if (last < first) return 0;
  const sums = sumsFrom(daily, first);
  return sumBefore(last + 1, daily, sums) - sumBefore(first, daily, sums);
}

/** Tolerance for rounded sums: a day that lacks no more than this is enough. */
const NEARLY = 1e-9;

/** The days that a search adds at a time: few, because days after the found one are calculated in vain. */
const STEP = 8;

/**
 * The first day by whose end the days from `from` on add up to an amount, within a number of days; null where they do
 * not.
 */
export function firstDayReaching(
  daily: DailyAmount,
  from: Day,
  { wanted, within }: { readonly wanted: number; readonly within: number },
): Day | null {
  const sums = sumsFrom(daily, from);
  const enough = sumBefore(from, daily, sums) + wanted - NEARLY;
  let days = Math.min(STEP, within);
  while (sumBefore(from + days, daily, sums) < enough) {
    if (days === within) return null;
    days = Math.min(days + STEP, within);
  }
  return firstDayWith(sums, from, { days, enough });
}

function firstDayWith(
  { first, upTo }: Sums,
  from: Day,
  { days, enough }: { readonly days: number; readonly enough: number },
): Day {
  let [early, late] = [0, days - 1];
  while (early < late) {
    const middle = Math.floor((early + late) / 2);
    if ((upTo[from + middle + 1 - first] ?? 0) >= enough) late = middle;
    else early = middle + 1;
  }
  return plus(from, early);
}
