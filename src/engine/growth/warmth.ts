import type { Day } from "../../base/index.ts";
import type { Warmth } from "../../crops/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { DayAir } from "../climate/day-air.ts";
import { isLongEnough } from "../climate/sun.ts";
import { cached } from "./memo.ts";
import { type DailyAmount, firstDayReaching, sumBetween } from "./sums.ts";

/** What warmth is counted between [°C]; null: no ceiling. */
export type Bounds = { readonly baseC: number; readonly ceilingC: number | null };

/** Bounds cached by the facts they are from. */
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
 * A day's warmth [degree-C days]: how far the mean of its low and high is above the base, never negative. With a
 * ceiling, low and high are each first brought between base and ceiling.
 * Source: Peet, NC State University, Calculating Degree Days, without a ceiling; University of Wisconsin Extension,
 * Calculating growing degree days, 2018, with one.
 */
export function dayWarmth({ lowC, highC }: DayAir, { baseC, ceilingC }: Bounds): number {
  if (ceilingC === null) return Math.max(0, (lowC + highC) / 2 - baseC);
  const between = (at: number) => Math.min(Math.max(at, baseC), ceilingC);
  return (between(lowC) + between(highC)) / 2 - baseC;
}

/** The warmth of a packet's days [degree-C days]: each a day at the temperature that the packet assumes. */
export function packetWarmth(days: number, warmth: Warmth): number {
  return days * (warmth.packetC.value - warmth.baseC.value);
}

/** The most days in which warmth is summed: a year, so that every season is in it. */
export const MOST_DAYS = 365;

/** Each day's warmth, cached by climate, bounds and season. */
const dailies = new WeakMap<Climate, Map<Bounds, Map<number, DailyAmount>>>();

/**
 * The warmth [degree-C days] of any day of a climate, in a season that much warmer than usual [K]. Under glass none on days
 * too short to grow, which are warm there all the same.
 */
export function dailyWarmth(climate: Climate, bounds: Bounds, warmerK: number): DailyAmount {
  const byBounds = cached(dailies, climate, () => new Map<Bounds, Map<number, DailyAmount>>());
  const bySeason = cached(byBounds, bounds, () => new Map<number, DailyAmount>());
  return cached(bySeason, warmerK, () => warmthOn(climate, bounds, warmerK));
}

function warmthOn(climate: Climate, bounds: Bounds, warmerK: number): DailyAmount {
  const { dayHours, underGlass } = climate;
  const grows = (day: Day) => !underGlass || !dayHours || isLongEnough(dayHours, day);
  return (day) => (grows(day) ? dayWarmth(climate.air(day, warmerK), bounds) : 0);
}

/**
 * The first day by whose end the warmth from `from` on (inclusive) reaches an amount [degree-C days]; null where a year
 * does not reach it.
 */
export function reachedOn(daily: DailyAmount, from: Day, wanted: number): Day | null {
  return firstDayReaching(daily, from, { wanted, within: MOST_DAYS });
}

/** The warmth [degree-C days] from the first day to the last, both inclusive; 0 where they are the wrong way round. */
export function warmthBetween(daily: DailyAmount, first: Day, last: Day): number {
  return sumBetween(daily, first, last);
}
