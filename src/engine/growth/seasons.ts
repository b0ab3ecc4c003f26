import { type Day, plus } from "../../base/days/day.ts";
import type { Climate } from "../climate/climate.ts";
import { ONE_IN_TEN } from "../climate/normal.ts";

/** The three seasons that a milestone's early, usual and late are reckoned in. */
export type SeasonWarmth = "warm" | "usual" | "cold";

/** Days of the month whose spread from year to year is known. */
const MONTH = 30;

/** The part of that spread's square that is left over any span, since whole seasons run warm or cold. Source: house rule; a quarter. */
const LASTING = 0.25;

/** No span is so short that its weather spreads more than this many days' does. Source: house rule; a spell of weather lasts about a week. */
const SPELL_DAYS = 7;

/** Seasons are told apart to so much [K], so that the sums of many plantings can be shared. */
const STEP_K = 0.5;

/**
 * How much warmer [K] than usual the warm season runs over a span of so many days from a day, colder in the cold one:
 * one season in ten is warmer still. Short spans spread more than a month does, long ones less.
 * Source: house rule: weeks weigh each for itself beside a part that lasts; held by a hindcast on station years.
 */
export function warmerK(climate: Climate, season: SeasonWarmth, from: Day, days: number): number {
  if (season === "usual") return 0;
  const monthK = climate.spreadK(plus(from, days / 2));
  const share = LASTING + ((1 - LASTING) * MONTH) / Math.max(days, SPELL_DAYS);
  const size = ONE_IN_TEN * monthK * Math.sqrt(share);
  const stepped = Math.max(STEP_K, Math.round(size / STEP_K) * STEP_K);
  return season === "warm" ? stepped : -stepped;
}
