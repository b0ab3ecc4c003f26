import { type Day, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "./sowing-context.ts";

/** First warm days, cached by climate, then year, bed, soil and season. */
const warmDays = new WeakMap<Climate, Map<string, Day | null>>();

/**
 * The first day of the plan's season on which the bed's soil is warm enough [°C], in a season that much warmer than
 * usual [K]; null where it never is.
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

function lookFor(
  { plan, climate, bed }: SowingContext,
  soilMinC: number,
  warmerK: number,
): Day | null {
  const { from, to } = seasonOf(plan);
  for (let day = from; day <= to; day = plus(day, 1))
    if (climate.soilC(day, bed, warmerK) >= soilMinC) return day;
  return null;
}
