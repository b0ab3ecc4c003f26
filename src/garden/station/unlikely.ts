import { dayOrThrow, fahrenheit, MONTHS, type Problem } from "../../base/index.ts";
import type { MonthlyNormals } from "./months.ts";
import {
  contradictsLatitude,
  dayNumberOf,
  firstNights,
  isSouth,
  lastNights,
  type SearchedYear,
} from "./record.ts";
import type { Station } from "./station.ts";
import { wrong } from "./table.ts";
import type { SiteFigures } from "./weather-file.ts";

/**
 * The least mean high of the warmest month in which anything is gardened [°C]. Source: house rule: even plants at the
 * tundra's edge need more.
 */
const LEAST_SUMMER_C = 5;

/**
 * The mean rain of a month above which the unit is doubted [mm]. Source: house rule: few stations on earth have as
 * much.
 */
const MOST_RAIN_MM = 1000;

/**
 * A record whose frost nights of every year are this near to midsummer can't be a garden's [days]. Source: house rule:
 * half a week.
 */
const NEAR_MIDSUMMER_DAYS = 3;

function coldSummer({ highC }: MonthlyNormals, inF: boolean): readonly string[] {
  const warmest = Math.max(...highC.flatMap((high) => high ?? []));
  if (warmest >= LEAST_SUMMER_C) return [];
  const said = inF ? `${Math.round(fahrenheit(warmest))} °F` : `${Math.round(warmest)} °C`;
  return [`The warmest month's mean high is ${said}, which is no summer.`];
}

function muchRain({ rainMm }: MonthlyNormals, inF: boolean): readonly string[] {
  const most = Math.max(...(rainMm ?? [0]));
  if (most <= MOST_RAIN_MM) return [];
  const month = MONTHS[rainMm?.indexOf(most) ?? 0];
  const said = inF ? `${Math.round(most / 25.4)} in` : `${Math.round(most)} mm`;
  return [`${month} has ${said} of rain, which hardly any place on earth has.`];
}

/**
 * What is hardly possible in a station's figures, a sentence each, with its likely cause: a cold summer and months of
 * too much rain speak against the unit, January and July against the latitude. Empty where nothing is.
 */
export function unlikelyIn(station: Station, { months, latitude }: SiteFigures): readonly string[] {
  const inF = station.unit === "°F";
  const odd = [...coldSummer(months, inF), ...muchRain(months, inF)];
  const unit = `The unit looks wrong: the file was read in ${station.unit}; say another with --in.`;
  const half =
    latitude !== null && contradictsLatitude(station.days, latitude) ? [sayHalf(latitude)] : [];
  return [...odd, ...(odd.length > 0 ? [unit] : []), ...half];
}

function sayHalf(latitude: number): string {
  const [side, month] = latitude < 0 ? ["south", "July"] : ["north", "January"];
  return `Latitude ${latitude} lies ${side} of the equator, but ${month} is much the warmer month: check which of the two is wrong.`;
}

/**
 * The problem of a record whose every counted year has frost through midsummer, last and first nights alike, else
 * null. Midsummer is that of the warmer of January and July, whatever the latitude. Problem: `frost-at-midsummer`.
 */
export function frozenThrough({ days, unit }: Station, file: string): Problem | null {
  const south = isSouth(days, null);
  const search = { atMostC: 0, south };
  const midsummer = dayNumberOf(south ? dayOrThrow(2028, 1, 31) : dayOrThrow(2027, 7, 31), 2027);
  const nights = counted([...lastNights(days, search), ...firstNights(days, search)]);
  const near = (night: number | "none") =>
    night !== "none" && Math.abs(night - midsummer) <= NEAR_MIDSUMMER_DAYS;
  if (nights.length === 0 || !nights.every(near)) return null;
  const is = `Every year's last and first frost lie at midsummer, read in ${unit}`;
  const at = { file, line: 1, column: 1 };
  return wrong("frost-at-midsummer", at, is, "The unit looks wrong: say another with --in");
}

function counted(searchedYears: readonly SearchedYear[]): readonly (number | "none")[] {
  return searchedYears.flatMap(({ night }) =>
    night === "left out" || night === "cut off" ? [] : [night],
  );
}
