import { type Day, isoOf, type Problem } from "../base/index.ts";
import {
  type AnswerFault,
  readStation,
  readWeatherAnswer,
  type WeatherQuestion,
} from "../garden/index.ts";
import type { KnownWeather, WeatherService } from "../garden/model/index.ts";

export type { WeatherQuestion } from "../garden/index.ts";
export {
  type KnownWeather,
  mergeWeather,
  WEATHER_SERVICES,
  type WeatherService,
} from "../garden/model/index.ts";

/** What a service's answer says of the weather, or what is wrong with it; nothing of a faulty one is used. */
export type WeatherReading =
  | { readonly weather: KnownWeather; readonly fault: null }
  | { readonly weather: null; readonly fault: AnswerFault };

/** The text of a service's answer as what is known of the weather. Never throws, whatever the text. */
export function readWeather(
  source: WeatherService,
  text: string,
  question: WeatherQuestion,
): WeatherReading {
  const { days, fault } = readWeatherAnswer(source, text, question);
  if (fault !== null) return { weather: null, fault };
  return { weather: { source, asOf: question.today, days, saidColder: [] }, fault: null };
}

const HEAD = "date,low (°C),high (°C),rain (mm)";

/** Rows of day, low and high [°C], rain [mm] as a table that `readStation` reads, empty cells where nothing is known. */
export function tableOf(rows: readonly (readonly (string | number | null)[])[]): string {
  return `${[HEAD, ...rows.map((row) => row.map((cell) => cell ?? "").join(","))].join("\n")}\n`;
}

/** What is known of the weather as a table of days, to be stored as a file and read again by `weatherFromTable`. */
export function weatherTable({ days }: KnownWeather): string {
  return tableOf(days.map(({ day, lowC, highC, rainMm }) => [isoOf(day), lowC, highC, rainMm]));
}

/**
 * A table of days, measured before a day and forecast from it on, as what is known of the weather; null with problems, those of a
 * station's file.
 */
export function weatherFromTable(
  text: string,
  file: string,
  asOf: Day,
): { readonly weather: KnownWeather | null; readonly problems: readonly Problem[] } {
  const request = { file, columns: {}, where: [], unit: null, leastDays: 1 };
  const { station, problems } = readStation(text, request);
  if (station === null) return { weather: null, problems };
  const days = station.days.flatMap(({ day, lowC, highC, rainMm }) =>
    lowC === null || highC === null ? [] : [{ day, lowC, highC, rainMm, gustMps: null }],
  );
  return { weather: { source: "a file", asOf, days, saidColder: [] }, problems: [] };
}
