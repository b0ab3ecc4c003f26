import { type Day, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "./sowing-context.ts";

/** First warm days, cached by climate, then year, bed, soil and season. */
const warmDays = new WeakMap<Climate, Map<string, Day | null>>();

/**
 * The first day of the plan's season on which the bed's soil is warm enough [°C], some days running where its weather is
 * known, in a season that much warmer than usual [K]; null where it never is.
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
 * Days running on which soil of real weather has to be warm, or one mild week in February would do. The smooth curve is
 * there on one day: on average that on which real weather has been warm so long, as is measured on eight station years.
 * Source: Homan, Kansas State Research and Extension, four or five days; five leave the least bias in tests/hindcast.
 */
const DAYS_RUNNING = 5;

function lookFor(
  { plan, climate, bed }: SowingContext,
  soilMinC: number,
  warmerK: number,
): Day | null {
  const { from, to } = seasonOf(plan);
  let running = 0;
  for (let day = from; day <= to; day = plus(day, 1)) {
    running = climate.soilC(day, bed, warmerK) >= soilMinC ? running + 1 : 0;
    if (running >= (climate.isObserved(day) ? DAYS_RUNNING : 1)) return day;
  }
  return null;
}
