import { type Day, plus } from "../days/day.ts";

/** What each day brings: warmth, or a share of the way to coming up; never negative. */
export type Daily = (day: Day) => number;

/** Sums of a daily from a first day on: `upTo[i]` is what the days before `first + i` brought. */
type Sums = { first: Day; upTo: number[] };

/** Sums by the daily they are of, so that no day is reckoned twice. A memo, nothing more. */
const known = new WeakMap<Daily, Sums>();

/** Days before the first one asked for that are summed with it, so that sums seldom begin anew. */
const AHEAD = 60;

/** Sums that reach from a day to another, both included. */
function sumsFor(daily: Daily, from: Day, to: Day): Sums {
  const old = known.get(daily);
  const sums = old && old.first <= from ? old : { first: plus(from, -AHEAD), upTo: [0] };
  if (sums !== old) known.set(daily, sums);
  const { first, upTo } = sums;
  for (let i = upTo.length; i <= to + 1 - first; i++)
    upTo.push((upTo[i - 1] ?? 0) + daily(plus(first, i - 1)));
  return sums;
}

/** What the days from the first to the last brought together, both included; 0 where they are the wrong way round. */
export function sumBetween(daily: Daily, first: Day, last: Day): number {
  if (last < first) return 0;
  const sums = sumsFor(daily, first, last);
  return at(sums, last + 1) - at(sums, first);
}

const at = ({ first, upTo }: Sums, day: number): number => upTo[day - first] ?? 0;

/** Sums are rounded: a day that lacks no more than this is enough. */
const NEARLY = 1e-9;

/** Days that a search goes on by at a time. */
const STEP = 32;

/** The first day by whose end the days from `from` on have brought that much, looking at so many days at the most; null where they do not. */
export function broughtBy(
  daily: Daily,
  from: Day,
  { wanted, within }: { readonly wanted: number; readonly within: number },
): Day | null {
  for (let days = Math.min(STEP, within); ; days = Math.min(days + STEP, within)) {
    const sums = sumsFor(daily, from, plus(from, days - 1));
    const enough = at(sums, from) + wanted - NEARLY;
    if (at(sums, from + days) >= enough) return firstWith(sums, from, { days, enough });
    if (days === within) return null;
  }
}

function firstWith(
  sums: Sums,
  from: Day,
  { days, enough }: { readonly days: number; readonly enough: number },
): Day {
  let [early, late] = [0, days - 1];
  while (early < late) {
    const middle = Math.floor((early + late) / 2);
    if (at(sums, from + middle + 1) >= enough) late = middle;
    else early = middle + 1;
  }
  return plus(from, early);
}
