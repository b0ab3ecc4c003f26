import { type Day, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "./sowing-context.ts";

/** First warm days, cached by climate, then year, bed, soil and season. */
const warmDays = new WeakMap<Climate, Map<string, Day | null>>();

/**
 * The first day of the plan's season on which the bed's soil is warm enough [°C] and can be trusted to stay so, or as warm as is
 * asked of a cool summer, some days running where its weather is known, in a season that much warmer than usual [K]; null where
 * it never is. A mild week in February is half gone by the time that seed is up, so it counts for half.
 */
export function firstWarmSoil(
  context: SowingContext,
  soilMinC: number,
  warmerK: number,
): Day | null {
  const days = warmDays.get(context.climate) ?? new Map<string, Day | null>();
  warmDays.set(context.climate, days);
  const key = `${context.plan.year}|${context.climate.soilKey(context.bed)}|${soilMinC}|${warmerK}`;
  const known = days.get(key);
  if (known !== undefined) return known;
  const day = lookFor(context, soilMinC, warmerK);
  days.set(key, day);
  return day;
}

/**
 * How much cooler than the warmest soil of its year a crop's soil is asked to be at the most [K]. Source: house rule; where
 * summers are cool warm crops go in late in May and not at midsummer.
 */
const BELOW_WARMEST_K = 3.5;

/** How much less than its figure a crop's soil is asked at the most [K]. Source: house rule. */
const LESS_K = 3.5;

/** Soil up to which a crop's figure is asked everywhere [°C]. Source: house rule; seed of warm crops rots in colder. */
const ASKED_ANYWHERE_C = 11;

/** Crops that want warmer soil than that are of hot summers, and wait for it in vain [°C]. Source: house rule, 61 °F. */
const HOT_SOIL_C = 16;

/** Warmest soils of a season, cached by climate, then year and bed. */
const warmest = new WeakMap<Climate, Map<string, number>>();

function warmestSoilC({ plan, climate, bed }: SowingContext): number {
  const known = warmest.get(climate) ?? new Map<string, number>();
  warmest.set(climate, known);
  const key = `${plan.year}|${climate.soilKey(bed)}`;
  const there = known.get(key);
  if (there !== undefined) return there;
  const { from, to } = seasonOf(plan);
  let most = climate.soilC(from, bed);
  for (let day = from; day <= to; day = plus(day, LOOK_EVERY_DAYS))
    most = Math.max(most, climate.soilC(day, bed));
  known.set(key, most);
  return most;
}

/** Days from one look for the warmest soil to the next: a smooth year moves little in between. */
const LOOK_EVERY_DAYS = 7;

/**
 * The soil that a crop whose figure is `soilMinC` is asked to have here [°C]: the figure, or less where a cool summer's soil
 * is hardly warmer at its best.
 */
export function askedSoilC(context: SowingContext, soilMinC: number): number {
  if (soilMinC <= ASKED_ANYWHERE_C || soilMinC > HOT_SOIL_C) return soilMinC;
  const most = warmestSoilC(context) - BELOW_WARMEST_K;
  return Math.min(soilMinC, Math.max(ASKED_ANYWHERE_C, soilMinC - LESS_K, most));
}

/**
 * Days running on which soil of real weather has to be warm. Source: house rule; Homan, Kansas State Research and Extension, has
 * four or five mornings of a thermometer, and this soil is the mean of eleven days already. Of one to five, two and three come
 * neither sooner nor later than the smooth curve on either station of tests/hindcast.
 */
const DAYS_RUNNING = 3;

function lookFor(context: SowingContext, soilMinC: number, warmerK: number): Day | null {
  const { plan, climate, bed } = context;
  const { from, to } = seasonOf(plan);
  const asked = askedSoilC(context, soilMinC);
  let running = 0;
  for (let day = from; day <= to; day = plus(day, 1)) {
    running = climate.soilAheadC(day, bed, warmerK) >= asked ? running + 1 : 0;
    if (running >= (climate.isObserved(day) ? DAYS_RUNNING : 1)) return day;
  }
  return null;
}
