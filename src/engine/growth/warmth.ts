import type { Day } from "../../base/days/day.ts";
import type { Warmth } from "../../crops/facts.ts";
import type { Climate, DayAir } from "../climate/climate.ts";
import { cached } from "./memo.ts";
import { type DailyAmount, firstDayReaching, sumBetween } from "./sums.ts";

/** What warmth is counted between [°C]; null: no ceiling. */
export type Bounds = { readonly baseC: number; readonly ceilingC: number | null };

/** Bounds by the facts they are of. A memo, nothing more. */
const known = new WeakMap<Warmth, Bounds>();

/** A crop's bounds without their sources: the same object for the same facts. */
export function boundsOf(warmth: Warmth): Bounds {
  const bounds = known.get(warmth) ?? {
    baseC: warmth.baseC.value,
    ceilingC: warmth.ceilingC?.value ?? null,
  };
  known.set(warmth, bounds);
  return bounds;
}

/**
 * A day's warmth [degree-C days]: how far the mean of its low and high lies above the base, never negative. With a
 * ceiling, low and high are each first brought between base and ceiling.
 * Source: Peet, NC State University, Calculating Degree Days, without a ceiling; University of Wisconsin Extension,
 * Calculating growing degree days, 2018, with one.
 */
export function dayWarmth({ lowC, highC }: DayAir, { baseC, ceilingC }: Bounds): number {
  if (ceilingC === null) return Math.max(0, (lowC + highC) / 2 - baseC);
  const between = (at: number) => Math.min(Math.max(at, baseC), ceilingC);
  return (between(lowC) + between(highC)) / 2 - baseC;
}

/** Warmth that a packet's days stand for [degree-C days]: each a day at the warmth the packet takes for granted. */
export function packetWarmth(days: number, warmth: Warmth): number {
  return days * (warmth.packetC.value - warmth.baseC.value);
}

/** Days after which warmth is no longer waited for: a year, and the crop has seen every season. */
export const MOST_DAYS = 365;

/** Each day's warmth by climate, bounds and season. A memo, nothing more. */
const dailies = new WeakMap<Climate, Map<Bounds, Map<number, DailyAmount>>>();

/** The warmth [degree-C days] of any day of a climate, in a season so much warmer than usual [K]. */
export function dailyWarmth(climate: Climate, bounds: Bounds, warmerK: number): DailyAmount {
  const byBounds = cached(dailies, climate, () => new Map<Bounds, Map<number, DailyAmount>>());
  const bySeason = cached(byBounds, bounds, () => new Map<number, DailyAmount>());
  return cached(bySeason, warmerK, () => (day) => dayWarmth(climate.air(day, warmerK), bounds));
}

/** The first day by whose end that much warmth [degree-C days] has come together from `from` on, both included; null where a year does not bring it. */
export function reachedOn(daily: DailyAmount, from: Day, wanted: number): Day | null {
  return firstDayReaching(daily, from, { wanted, within: MOST_DAYS });
}

/** Warmth [degree-C days] that came together from the first day to the last, both included; 0 where they are the wrong way round. */
export function warmthBetween(daily: DailyAmount, first: Day, last: Day): number {
  return sumBetween(daily, first, last);
}
