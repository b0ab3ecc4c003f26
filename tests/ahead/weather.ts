import { type Day, plus } from "../../src/base/days/day.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { KnownWeather, WeatherDay } from "../../src/garden/model/weather.ts";

/** Days that a forecast reaches, today with them. */
const DAYS_AHEAD = 10;

/**
 * How far a forecast's temperature is off [K, standard deviation], by days ahead from 0 to 9. Source: from memory, unchecked:
 * about 1.5 K for tomorrow, twice that after a week, near the climate's own spread after ten days.
 */
const OFF_K = [1, 1.5, 1.8, 2.1, 2.4, 2.7, 3, 3.3, 3.6, 3.9] as const;

/** A number from 0 to 1 for a station, a day and a lead; the same ones give the same number. */
function chance(key: string): number {
  let hash = 2166136261;
  for (const letter of key) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 16777619);
  hash = Math.imul(hash ^ (hash >>> 15), 2246822507);
  hash = Math.imul(hash ^ (hash >>> 13), 3266489909);
  return ((hash ^ (hash >>> 16)) >>> 0) / 2 ** 32;
}

/** A number of the normal distribution. Source: Box and Muller, 1958. */
function normal(key: string): number {
  const [a, b] = [chance(`${key}a`), chance(`${key}b`)];
  return Math.sqrt(-2 * Math.log(1 - a)) * Math.cos(2 * Math.PI * b);
}

/** What was known on a day: the true weather until yesterday, and a forecast of ten days that is off as forecasts are. */
export function knownOn(truth: ObservedWeather, asOf: Day, seed: string): KnownWeather {
  const days: WeatherDay[] = [];
  for (const [day, { lowC, highC }] of truth) {
    const ahead = day - asOf;
    if (ahead >= DAYS_AHEAD) continue;
    const offK = ahead < 0 ? 0 : (OFF_K[ahead] ?? 0) * normal(`${seed} ${asOf} ${ahead}`);
    days.push({ day, lowC: lowC + offK, highC: highC + offK, rainMm: null, gustMps: null });
  }
  return { source: "Open-Meteo", asOf, days, saidColder: [] };
}

/** The same as the climate takes it. */
export function observedOn(truth: ObservedWeather, asOf: Day, seed: string): ObservedWeather {
  return new Map(
    knownOn(truth, asOf, seed).days.map(({ day, lowC, highC }) => [day, { lowC, highC }]),
  );
}

/** The days from one to another, both inclusive. */
export function daysFrom(from: Day, to: Day): readonly Day[] {
  return Array.from({ length: to - from + 1 }, (_, i) => plus(from, i));
}
