import { type Day, fahrenheit, isoOf, MONTHS, partsOf, sayDay } from "../../base/index.ts";
import { type FrostSide, NIGHT_KEYS, NIGHTS_F } from "../plan/nights.ts";
import { type FrostRecord, frostRecordOf, type NightDates } from "./frost-record.ts";
import { type MonthlyNormals, monthlyNormalsOf } from "./months.ts";
import { dayOfNumber, isSouth } from "./record.ts";
import type { Station } from "./station.ts";

/**
 * What a site's own figures are: its months, its frost nights, its latitude [degrees] where known, and the hemisphere
 * they are calculated for.
 */
export type SiteFigures = {
  readonly months: MonthlyNormals;
  readonly frost: FrostRecord;
  readonly latitude: number | null;
  readonly south: boolean;
};

/**
 * The figures of a station's days. `latitude` [degrees] overrules the file's own; without either, the warmer of January
 * and July decides the hemisphere.
 */
export function figuresOf(station: Station, given: number | null): SiteFigures {
  const { days } = station;
  const latitude = given ?? station.latitude;
  const south = isSouth(days, latitude);
  return { months: monthlyNormalsOf(days), frost: frostRecordOf(days, south), latitude, south };
}

/** The least years for early and late dates. Source: house rule: two years show no spread. */
const YEARS_FOR_THREE = 3;

/**
 * A night rounded to a whole day on the careful side: last nights later, first ones earlier; `none` where there is
 * none.
 */
function sayNight(number: number | null, side: FrostSide): string {
  if (number === null) return "none";
  const near = Math.round(number * 1e6) / 1e6;
  return sayDay(dayOfNumber(side === "last" ? Math.ceil(near) : Math.floor(near)));
}

/** `[4 Mar, 28 Mar, 7 Apr]`, `4 Mar` for too few years for a spread, `none`; null where no year counts. */
function sayDates(dates: NightDates, side: FrostSide): string | null {
  const { early, usual, late, years, without } = dates;
  if (years === 0) return null;
  if (without === years) return "none";
  if (years < YEARS_FOR_THREE && without === 0) return sayNight(usual, side);
  const said = [early, usual, late].map((number) => sayNight(number, side));
  return said.every((one) => one === "none") ? "none" : `[${said.join(", ")}]`;
}

const list = (values: readonly number[], digits: number) =>
  `[${values.map((value) => String(Number(value.toFixed(digits)))).join(", ")}]`;

/** Where a station's days come from: a file's name, or a service and when and for which longitude [degrees] it was asked. */
export type FiguresSource = {
  readonly name: string;
  readonly asked?: { readonly longitude: number; readonly on: Day };
};

/** A text for YAML, in quotes where it could be read as anything else. */
function yamlText(text: string): string {
  const short = text.replace(/\s+/g, " ").trim().slice(0, 100);
  const plain = /^\p{L}[\p{L}\d .,/'()-]*$/u.test(short) && !/^(?:true|false|null)$/i.test(short);
  return plain ? short : JSON.stringify(short);
}

/** `2012 to 2015`, or the one year. */
export function sayYears({ days }: Pick<Station, "days">): string {
  const [first, last] = [days[0], days.at(-1)].map((one) => (one ? partsOf(one.day).year : 0));
  return first === last ? `${first}` : `${first} to ${last}`;
}

/** The names of months that no year has complete; a weather file can't be written while there are any. */
export function monthsMissing({ lowC, highC }: MonthlyNormals): readonly string[] {
  return MONTHS.filter((_, i) => lowC[i] == null || highC[i] == null);
}

function monthLines({ lowC, highC, spreadK, rainMm }: MonthlyNormals, inF: boolean): string[] {
  const means = (values: readonly (number | null)[]) =>
    list(
      values.map((value) => (inF ? fahrenheit(value ?? 0) : (value ?? 0))),
      1,
    );
  const lines = [`low: ${means(lowC)}`, `high: ${means(highC)}`];
  if (spreadK) {
    const spread = spreadK.map((value) => (inF ? value * 1.8 : value));
    lines.push(`spread: ${list(spread, 1)} # how much a month's mean differs from year to year`);
  }
  if (rainMm) {
    const rain = rainMm.map((value) => (inF ? value / 25.4 : value));
    lines.push(`rain: ${list(rain, inF ? 1 : 0)} # ${inF ? "inches" : "mm"} a month`);
  }
  return lines;
}

/**
 * A weather file's text for a plan: the latitude where known, twelve means of lows and highs, their spread and rain
 * where known, and early, usual and late dates of nights at 36, 32 and 28 °F, in °F and inches where the station's file
 * is, else in °C and mm. Every month must be there (`monthsMissing`).
 */
export function weatherFile(
  station: Station,
  figures: SiteFigures,
  { name, asked }: FiguresSource,
): string {
  const years = sayYears(station);
  const inF = station.unit === "°F";
  const { latitude } = figures;
  const nights = (["last", "first"] as const).flatMap((side) =>
    NIGHTS_F.flatMap((nightF) => {
      const said = sayDates(figures.frost[side][nightF], side);
      return said === null ? [] : [`${NIGHT_KEYS[side][nightF]}: ${said}`];
    }),
  );
  return `${[
    "# A station's own years, for the plan's weather.",
    "# Nights are early, usual and late: 10, 50 and 90 of 100 years have had them by then.",
    ...(station.name ? [`station: ${yamlText(station.name)}`] : []),
    `source: ${yamlText(name)}`,
    ...(asked ? [`fetched: ${isoOf(asked.on)}`] : []),
    `years: ${years}`,
    ...(latitude === null ? [] : [`latitude: ${Number(latitude.toFixed(2))}`]),
    ...(asked ? [`longitude: ${Number(asked.longitude.toFixed(2))}`] : []),
    `in: ${inF ? "°F" : "°C"}`,
    ...monthLines(figures.months, inF),
    ...nights,
  ].join("\n")}\n`;
}
