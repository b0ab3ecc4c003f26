import type { Day } from "../base/index.ts";
import { type AnswerFault, openMeteoRows, type YearsPlace } from "../garden/index.ts";
import { siteWeather } from "./site.ts";
import { tableOf } from "./weather.ts";

export { YEARS_FILE, type YearsPlace, yearsWanted } from "../garden/index.ts";

/** The years behind a place as a weather file with notes on what was used, or what is wrong with them. */
export type YearsReading =
  | { readonly file: string; readonly notes: readonly string[]; readonly fault: null }
  | { readonly file: null; readonly fault: AnswerFault };

/**
 * The answer of Open-Meteo's archive as a plan's weather file, by the very code that reads a station's. `fetched` is the day on which
 * it was asked for. Never throws, whatever the text. Faults: `not of the documented form`, `too few days`, `nonsense`.
 */
export function readYears(
  text: string,
  { latitude, longitude }: Pick<YearsPlace, "latitude" | "longitude">,
  fetched: Day,
): YearsReading {
  const rows = openMeteoRows(text, { latitude, longitude });
  if (rows === null) return { file: null, fault: "not of the documented form" };
  const station = { file: "Open-Meteo", columns: {}, where: [], unit: "°C" } as const;
  const source = { name: "Open-Meteo", asked: { longitude, on: fetched }, latitude };
  const { weather, notes, unlikely, problems } = siteWeather(tableOf(rows), station, source);
  if (weather === null)
    return {
      file: null,
      fault: problems.some(({ code }) => code === "month-missing") ? "too few days" : "nonsense",
    };
  return unlikely ? { file: null, fault: "nonsense" } : { file: weather, notes, fault: null };
}
