import type { Day } from "../../base/index.ts";
import type { WeatherDay } from "../model/weather.ts";
import { AIR_C } from "../station/station.ts";

/** What can be wrong with a service's answer. */
export type AnswerFault =
  | "no JSON"
  | "says an error"
  | "not of the documented form"
  | "of another place"
  | "in other units"
  | "too few days"
  | "days missing in between"
  | "of another time"
  | "nonsense";

/** The days of an answer, or what is wrong with it; nothing of a faulty one is used. */
export type WeatherAnswer =
  | { readonly days: readonly WeatherDay[]; readonly fault: null }
  | { readonly days: null; readonly fault: AnswerFault };

/** An answer that can't be used. */
export const faulty = (fault: AnswerFault): WeatherAnswer => ({ days: null, fault });

/** What was asked for: the place [degrees, south and west negative], its clock, and the garden's day of today. */
export type WeatherQuestion = {
  readonly latitude: number;
  readonly longitude: number;
  readonly clock: string;
  readonly today: Day;
};

/**
 * How far the place that is answered for may lie from the one asked about [degrees]. Source: house rule: services answer for
 * the middle of a cell of their own, and the largest of those are a quarter of a degree wide.
 */
const NEAR_DEGREES = 0.5;

/** Whether an answer is for the place that was asked about. */
export function isNear(
  asked: Pick<WeatherQuestion, "latitude" | "longitude">,
  latitude: number,
  longitude: number,
): boolean {
  const round = Math.abs(asked.longitude - longitude) % 360;
  const apart = Math.max(Math.abs(asked.latitude - latitude), Math.min(round, 360 - round));
  return apart <= NEAR_DEGREES;
}

/** The fewest days ahead, today with them, that are worth storing. Source: house rule: two nights to be warned of. */
const LEAST_AHEAD = 3;

/** More rain falls on no day on earth [mm], and no gust is stronger [m/s]. Source: from memory, unchecked: above the records. */
const MOST = { rainMm: 2000, gustMps: 115 } as const;

/**
 * The days of an answer in day order, once they are all possible, follow each other, and reach from today to two days ahead.
 * Faults: `nonsense`, `days missing in between`, `of another time`, `too few days`.
 */
export function checkedDays(
  found: readonly WeatherDay[],
  { today }: Pick<WeatherQuestion, "today">,
): WeatherAnswer {
  const days = [...found].sort((a, b) => a.day - b.day);
  if (!days.every(isPossible)) return faulty("nonsense");
  if (days.some(({ day }, i) => i > 0 && day !== (days[i - 1]?.day ?? day) + 1))
    return faulty("days missing in between");
  const ahead = days.filter(({ day }) => day >= today);
  if (days.length > 0 && (ahead.length === 0 || (days[0]?.day ?? today) > today))
    return faulty("of another time");
  return ahead.length < LEAST_AHEAD ? faulty("too few days") : { days, fault: null };
}

function isPossible({ lowC, highC, rainMm, gustMps, humidHours }: WeatherDay): boolean {
  return (
    lowC >= AIR_C.least &&
    highC <= AIR_C.most &&
    lowC <= highC &&
    isWithin(rainMm, MOST.rainMm) &&
    isWithin(gustMps, MOST.gustMps) &&
    isWithin(humidHours ?? null, 25)
  );
}

const isWithin = (value: number | null, most: number) =>
  value === null || (value >= 0 && value <= most);

/** Air as full of water as leaves stay wet in [%]. Source: from memory, unchecked: the Hutton criteria, 2017. */
export const HUMID_PERCENT = 90;

/** A text as JSON; undefined where it is none. */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
