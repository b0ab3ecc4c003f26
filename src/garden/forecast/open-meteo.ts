import * as v from "valibot";
import { dayFromIso } from "../../base/index.ts";
import type { WeatherDay } from "../model/weather.ts";
import {
  checkedDays,
  faulty,
  HUMID_PERCENT,
  isNear,
  jsonOf,
  type WeatherAnswer,
  type WeatherQuestion,
} from "./answer.ts";

const Numbers = v.array(v.nullable(v.number()));

/** The daily part of an answer of the forecast or the archive. Source: Open-Meteo, Weather Forecast API, documentation of `daily`. */
const AnswerSchema = v.object({
  latitude: v.number(),
  longitude: v.number(),
  daily_units: v.object({
    temperature_2m_min: v.string(),
    temperature_2m_max: v.string(),
    precipitation_sum: v.optional(v.string()),
    wind_gusts_10m_max: v.optional(v.string()),
  }),
  daily: v.object({
    time: v.array(v.string()),
    temperature_2m_min: Numbers,
    temperature_2m_max: Numbers,
    precipitation_sum: v.optional(Numbers),
    wind_gusts_10m_max: v.optional(Numbers),
  }),
  hourly_units: v.optional(v.object({ relative_humidity_2m: v.optional(v.string()) })),
  hourly: v.optional(
    v.object({ time: v.array(v.string()), relative_humidity_2m: v.optional(Numbers) }),
  ),
});

const ErrorSchema = v.object({ error: v.literal(true) });

type OpenMeteoAnswer = v.InferOutput<typeof AnswerSchema>;

/**
 * The days of an answer of the archive, gaps and all, as a station's rows: day, low and high [°C], rain [mm]; null where it is not of
 * the documented form, of another place or in other units.
 */
export function openMeteoRows(
  text: string,
  question: Pick<WeatherQuestion, "latitude" | "longitude">,
):
  | readonly (readonly [
      day: string,
      lowC: number | null,
      highC: number | null,
      rainMm: number | null,
    ])[]
  | null {
  const { success, output } = v.safeParse(AnswerSchema, jsonOf(text));
  if (!success || !isEven(output) || !isMetric(output)) return null;
  if (!isNear(question, output.latitude, output.longitude)) return null;
  const {
    time,
    temperature_2m_min: lows,
    temperature_2m_max: highs,
    precipitation_sum: rain,
  } = output.daily;
  return time.map((day, i) => [day, lows[i] ?? null, highs[i] ?? null, rain?.[i] ?? null]);
}

/**
 * The days of Open-Meteo's answer; it is asked in the garden's own zone, and so its days are the garden's. Days without a
 * low or a high at either end are left out. Faults: all of AnswerFault.
 */
export function readOpenMeteo(text: string, question: WeatherQuestion): WeatherAnswer {
  const json = jsonOf(text);
  if (json === undefined) return faulty("no JSON");
  if (v.is(ErrorSchema, json)) return faulty("says an error");
  const { success, output } = v.safeParse(AnswerSchema, json);
  if (!success || !isEven(output)) return faulty("not of the documented form");
  if (!isNear(question, output.latitude, output.longitude)) return faulty("of another place");
  if (!isMetric(output)) return faulty("in other units");
  const days = daysOf(output);
  return days === null ? faulty("not of the documented form") : checkedDays(days, question);
}

/** Whether every list is as long as that of the days or hours. */
function isEven({ daily, hourly }: OpenMeteoAnswer): boolean {
  return [daily, hourly ?? { time: [] }].every(({ time, ...lists }) =>
    Object.values(lists).every((list) => list === undefined || list.length === time.length),
  );
}

function isMetric({ daily_units: units, hourly_units: hourlyUnits }: OpenMeteoAnswer): boolean {
  return (
    units.temperature_2m_min === "°C" &&
    units.temperature_2m_max === "°C" &&
    (units.precipitation_sum ?? "mm") === "mm" &&
    (units.wind_gusts_10m_max ?? "m/s") === "m/s" &&
    (hourlyUnits?.relative_humidity_2m ?? "%") === "%"
  );
}

/** The days that have a low and a high; null where one is no day. */
function daysOf({ daily, hourly }: OpenMeteoAnswer): readonly WeatherDay[] | null {
  const days: WeatherDay[] = [];
  const humid = humidHoursByDay(hourly);
  for (const [i, time] of daily.time.entries()) {
    const day = dayFromIso(time);
    if (day === null) return null;
    const [lowC, highC] = [daily.temperature_2m_min[i], daily.temperature_2m_max[i]];
    if (lowC == null || highC == null) continue;
    days.push({
      ...{ day, lowC, highC },
      rainMm: daily.precipitation_sum?.[i] ?? null,
      gustMps: daily.wind_gusts_10m_max?.[i] ?? null,
      ...(humid.has(time) && { humidHours: humid.get(time) ?? 0 }),
    });
  }
  return days;
}

/** Hours of a day that must be said for its damp to be known. Source: house rule. */
const MOST_OF_A_DAY = 20;

/** Humid hours by the day they belong to, of days whose hours are said. */
function humidHoursByDay(hourly: OpenMeteoAnswer["hourly"]): ReadonlyMap<string, number> {
  const hours = new Map<string, { said: number; humid: number }>();
  for (const [i, time] of (hourly?.time ?? []).entries()) {
    const percent = hourly?.relative_humidity_2m?.[i] ?? null;
    if (percent === null) continue;
    const day = time.slice(0, 10);
    const { said, humid } = hours.get(day) ?? { said: 0, humid: 0 };
    hours.set(day, { said: said + 1, humid: humid + (percent >= HUMID_PERCENT ? 1 : 0) });
  }
  return new Map(
    [...hours].flatMap(([day, { said, humid }]) => (said >= MOST_OF_A_DAY ? [[day, humid]] : [])),
  );
}
