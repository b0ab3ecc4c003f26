import { type Day, plus } from "../../base/index.ts";
import type { Climate } from "../climate/climate.ts";
import { ONE_IN_TEN } from "../climate/normal.ts";

/** The three seasons that a milestone's early, usual and late are calculated in. */
export type SeasonWarmth = "warm" | "usual" | "cold";

/** Days of the month whose spread from year to year is known. */
const MONTH = 30;

/**
 * The part of the variance that remains over any span, because whole seasons are warm or cold. Source: house rule; a
 * quarter.
 */
const LASTING = 0.25;

/**
 * The shortest span for the spread [days]: shorter ones spread no more. Source: house rule; a spell of weather lasts
 * about a week.
 */
const SPELL_DAYS = 7;

/** The step to which seasons are rounded [K], so that the sums of many plantings can be shared. */
const STEP_K = 0.5;

/**
 * How much warmer [K] than usual the warm season is over a span of days from a day, and colder in the cold one: one
 * season in ten is warmer still. Short spans spread more than a month does, long ones less; how far a rough curve may be
 * off is the same for all.
 * Source: house rule: weeks vary independently beside a part that lasts; checked by a hindcast on station years.
 */
export function warmerK(climate: Climate, season: SeasonWarmth, from: Day, days: number): number {
  if (season === "usual") return 0;
  const middle = plus(from, days / 2);
  const share = LASTING + ((1 - LASTING) * MONTH) / Math.max(days, SPELL_DAYS);
  return inSteps(season, climate.spreadK(middle) * Math.sqrt(share), climate.curveK(middle));
}

/**
 * How much warmer [K] than usual soil has to be taken on a day of the warm season, and colder in the cold one, by what waits for
 * it: the month before spreads, and as much of that counts as lasts.
 */
export function aheadWarmerK(climate: Climate, season: SeasonWarmth, day: Day): number {
  if (season === "usual") return 0;
  const middle = plus(day, -MONTH / 2);
  return inSteps(season, climate.spreadK(middle) * climate.lasting(middle), climate.curveK(middle));
}

function inSteps(season: "warm" | "cold", yearK: number, curveK: number): number {
  const size = ONE_IN_TEN * Math.hypot(yearK, curveK);
  const stepped = Math.max(STEP_K, Math.round(size / STEP_K) * STEP_K);
  return season === "warm" ? stepped : -stepped;
}
