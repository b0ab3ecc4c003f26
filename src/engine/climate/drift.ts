import { type Day, dayOfYear, plus } from "../../base/index.ts";
import type { ClimateData } from "./climate.ts";
import { meanC } from "./day-air.ts";

/** Days over which a season so far is compared with a usual one, and how many of them must be known. Source: house rule: four weeks. */
const [COMPARED_DAYS, LEAST_DAYS] = [28, 14];

/**
 * How much warmer the four weeks before a day were than usual [K]; null where less than half of their days are known. Days that
 * were only forecast do not count.
 */
export function driftK(
  { observedWeather, lowC, highC }: Pick<ClimateData, "observedWeather" | "lowC" | "highC">,
  asOf: Day,
): number | null {
  const off = observedWeather
    .filter(([day]) => day < asOf && day >= plus(asOf, -COMPARED_DAYS))
    .map(([day, air]) => {
      const i = dayOfYear(day);
      return meanC(air) - meanC({ lowC: lowC[i] ?? 0, highC: highC[i] ?? 0 });
    });
  if (off.length < LEAST_DAYS) return null;
  return off.reduce((sum, each) => sum + each, 0) / off.length;
}
