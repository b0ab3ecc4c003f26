import { type Day, dayOfYear, plus } from "../../base/index.ts";
import type { ClimateData } from "./climate.ts";
import { meanC } from "./day-air.ts";

/** Days over which a season so far is compared with a usual one, and how many of them must be known. Source: house rule: four weeks. */
const [COMPARED_DAYS, LEAST_DAYS] = [28, 14];

/** A difference from a usual season that is worth a word [K]. Source: house rule; less is felt by no plant. */
export const WORTH_SAYING_K = 1;

type WeatherOfYear = Pick<ClimateData, "observedWeather" | "lowC" | "highC">;

/**
 * The four weeks before a day beside usual ones: the first of their days whose weather is known, how many are, and how much warmer
 * those were [K]; null where none is known. Days that were only forecast do not count.
 */
export function weeksBefore(
  { observedWeather, lowC, highC }: WeatherOfYear,
  asOf: Day,
): { readonly since: Day; readonly days: number; readonly warmerK: number } | null {
  const known = observedWeather.filter(([day]) => day < asOf && day >= plus(asOf, -COMPARED_DAYS));
  const off = known.map(([day, air]) => {
    const i = dayOfYear(day);
    return meanC(air) - meanC({ lowC: lowC[i] ?? 0, highC: highC[i] ?? 0 });
  });
  const since = known[0]?.[0];
  if (since === undefined) return null;
  const warmerK = off.reduce((sum, each) => sum + each, 0) / off.length;
  return { since, days: off.length, warmerK };
}

/** How much warmer the four weeks before a day were than usual [K]; null where less than half of their days are known. */
export function driftK(data: WeatherOfYear, asOf: Day): number | null {
  const weeks = weeksBefore(data, asOf);
  return weeks === null || weeks.days < LEAST_DAYS ? null : weeks.warmerK;
}
