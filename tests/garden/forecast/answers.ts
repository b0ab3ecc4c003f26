import { isoOf } from "../../../src/base/index.ts";
import type { WeatherQuestion } from "../../../src/garden/forecast/answer.ts";
import { isoDay } from "../../gardens.ts";

/**
 * Answers in the form that each service documents, made for tests: written from the documentation, from memory, and not
 * recorded from the services themselves.
 */
export const QUESTION: WeatherQuestion = {
  latitude: 46.6,
  longitude: -111.5,
  clock: "America/Denver",
  today: isoDay("2027-05-10"),
};

/** A day's low, high [°C], rain [mm] and gust [m/s]. */
export type Told = readonly [lowC: number, highC: number, rainMm?: number, gustMps?: number];

const UNITS = {
  time: "iso8601",
  temperature_2m_min: "°C",
  temperature_2m_max: "°C",
  precipitation_sum: "mm",
  wind_gusts_10m_max: "m/s",
};

/** Open-Meteo's answer for days from `from` on, with parts replaced. */
export function openMeteoAnswer(
  from: string,
  told: readonly Told[],
  change: (answer: Record<string, unknown>) => Record<string, unknown> = (answer) => answer,
): string {
  const days = told.map((_, i) => isoOf((isoDay(from) + i) as typeof QUESTION.today));
  return JSON.stringify(
    change({
      latitude: 46.625,
      longitude: -111.5,
      generationtime_ms: 0.1,
      utc_offset_seconds: -21600,
      timezone: "America/Denver",
      timezone_abbreviation: "GMT-6",
      elevation: 1200,
      daily_units: UNITS,
      daily: {
        time: days,
        temperature_2m_min: told.map(([low]) => low),
        temperature_2m_max: told.map(([, high]) => high),
        precipitation_sum: told.map(([, , rain]) => rain ?? null),
        wind_gusts_10m_max: told.map(([, , , gust]) => gust ?? null),
      },
    }),
  );
}

/** Three years of a place as the archive documents its answer, a sine of a year, with parts replaced. */
export function archiveAnswer(
  latitude: number,
  longitude: number,
  change: (answer: Record<string, unknown>) => object = (answer) => answer,
): string {
  const days = Array.from({ length: 3 * 365 }, (_, i) => Date.UTC(2024, 0, 1) + i * 86_400_000);
  const air = days.map((at) => 9 - 12 * Math.cos((2 * Math.PI * at) / (365.25 * 86_400_000)));
  return JSON.stringify(
    change({
      ...{ latitude, longitude, timezone: "GMT" },
      daily_units: { temperature_2m_min: "°C", temperature_2m_max: "°C", precipitation_sum: "mm" },
      daily: {
        time: days.map((at) => new Date(at).toISOString().slice(0, 10)),
        temperature_2m_min: air.map((c) => c - 5),
        temperature_2m_max: air.map((c) => c + 5),
        precipitation_sum: air.map(() => 1),
      },
    }),
  );
}

/** A step of MET Norway's answer: its hour (UTC), air [°C], rain of the next hour or six, damp [%], and the six hours' extremes. */
export type Step = {
  readonly time: string;
  readonly air: number;
  readonly hourMm?: number;
  readonly percent?: number;
  readonly six?: { readonly mm: number; readonly min: number; readonly max: number };
};

/** MET Norway's answer of these steps, with parts replaced. */
export function metNorwayAnswer(
  steps: readonly Step[],
  change: (properties: Record<string, unknown>) => Record<string, unknown> = (all) => all,
): string {
  return JSON.stringify({
    type: "Feature",
    geometry: { type: "Point", coordinates: [-111.5, 46.6, 1200] },
    properties: change({
      meta: {
        updated_at: "2027-05-10T10:00:00Z",
        units: {
          air_temperature: "celsius",
          precipitation_amount: "mm",
          wind_speed: "m/s",
          relative_humidity: "%",
          air_pressure_at_sea_level: "hPa",
        },
      },
      timeseries: steps.map(({ time, air, hourMm, percent, six }) => ({
        time,
        data: {
          instant: {
            details: {
              air_temperature: air,
              wind_speed: 3,
              ...(percent !== undefined && { relative_humidity: percent }),
            },
          },
          ...(hourMm !== undefined && {
            next_1_hours: { summary: {}, details: { precipitation_amount: hourMm } },
          }),
          ...(six && {
            next_6_hours: {
              details: {
                precipitation_amount: six.mm,
                air_temperature_min: six.min,
                air_temperature_max: six.max,
              },
            },
          }),
        },
      })),
    }),
  });
}
