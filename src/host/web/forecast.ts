import type { Measures } from "../../base/index.ts";
import { type Day, degreesC, plus, sayDay, sayQuantity, shortWeekday } from "../../base/index.ts";
import { loadWeather, weatherRecord } from "../store/weather.ts";
import { SERVICES } from "../weather/terms.ts";
import { weatherCellOf } from "./garden-context.ts";
import { type GardenRequest, todayIn } from "./garden-request.ts";
import type { ForecastShown } from "./pages/forecast.tsx";

/** A forecast older than this is said to be old [ms]. Source: house rule: a day without an answer is not usual. */
const OLD_MS = 24 * 3_600_000;

/** The forecast as a page shows it, and tonight's low [°C]; null where the garden asks nobody. */
export type Forecast = { readonly shown: ForecastShown; readonly tonightC: number | null };

/** What the night after a day asks something for at a low [°C], in one line; empty where nothing. */
export type InShort = (day: Day, lowC: number) => string;

/**
 * What is known of the coming nights, and what each asks something for; the night after a day is shown at that day. Null where nobody
 * is asked.
 */
export function forecastOf(gardenRequest: GardenRequest, inShort: InShort): Forecast | null {
  const { context, stored } = gardenRequest;
  const plan = stored.plans.at(-1)?.summary;
  if (!plan?.forecast) return null;
  const today = todayIn(gardenRequest);
  const days = loadWeather(context.sql, weatherCellOf(stored))?.days ?? [];
  const lows = new Map(days.map(({ day, lowC }) => [plus(day, -1), lowC]));
  const nights = days.filter(({ day }) => day >= today && lows.has(day));
  return {
    tonightC: lows.get(today) ?? null,
    shown: {
      nights: nights.map(({ day }) => ({
        name: nightName(day, today),
        low: sayLow(lows.get(day) ?? 0, plan.measures),
        asksFor: inShort(day, lows.get(day) ?? 0),
      })),
      source: SERVICES[plan.forecast.source].attribution,
      age: ageText(gardenRequest),
    },
  };
}

const sayLow = (lowC: number, measures: Measures) => sayQuantity(degreesC(lowC), measures);

function nightName(day: Day, today: Day): string {
  if (day === today) return "Tonight";
  return day === plus(today, 1) ? "Tomorrow night" : `${shortWeekday(day)} ${sayDay(day)}`;
}

/** How old the forecast is where that is worth saying; empty where it is fresh. */
function ageText({ context }: GardenRequest): string {
  const record = weatherRecord(context.sql);
  if (record === null) return "The forecast has not been asked for yet. It comes within minutes.";
  const { fetchedAt, fault } = record;
  const why = fault === null ? "" : ` (${fault})`;
  if (fetchedAt === null) return `There is no forecast yet: the service did not answer${why}.`;
  const hours = Math.floor((context.now() - fetchedAt) / 3_600_000);
  return context.now() - fetchedAt < OLD_MS
    ? ""
    : `This forecast is ${Math.floor(hours / 24)} day${hours < 48 ? "" : "s"} old: the service has not answered since${why}.`;
}
