import { DAYS_IN_YEAR } from "../../base/index.ts";
import { knowing } from "./estimate.ts";
import { HOTTEST, KNOWN_AFTERNOONS, KNOWN_NIGHTS, LOW_ON_FROST_DATE } from "./rough-air.ts";
import { climateAt, seaSide } from "./station-climates.ts";

/** What frost dates can be guessed from: where, and the usual temperatures of the hottest and the coldest month [°C]. */
export type TwoTemperatures = {
  readonly latitude: number | null;
  readonly south: boolean;
  readonly clock: string;
  readonly hottestC: number;
  readonly coldestC: number;
};

/** Days of a year, 0 to 364: the usual last and first frost. */
export type GuessedFrosts = { readonly last: number; readonly first: number };

/**
 * How far the early and the late date lie from a guessed usual one [days]. Source: measured on the stations of
 * tests/sources/climate-normals.csv, nine in ten guesses within 22 days; with the 15 of FROST_SPREAD_DAYS as independent.
 */
export const GUESSED_SPREAD_DAYS = 27;

/** The least from a guessed frost to the hottest day [days]. Source: house rule: whoever gardens there has a month. */
const LEAST_HALF = 15;

/**
 * Frost dates guessed from two temperatures; null for a place that is likely without frost. What stations of such a place are like,
 * given both, has its mean low at the frost dates' own on those days. Source: as roughAir, backwards.
 */
export function frostsByTemperatures(place: TwoTemperatures): GuessedFrosts | null {
  const { latitude, south, clock, hottestC, coldestC } = place;
  const known = [
    { ...KNOWN_AFTERNOONS, value: hottestC },
    { ...KNOWN_NIGHTS, value: coldestC },
  ].reduce(knowing, climateAt(latitude, clock));
  const [mean = 0, rise = 0] = known.means;
  const height = (LOW_ON_FROST_DATE.meanC - mean) / rise;
  if (height <= -1) return null;
  const half = Math.max(
    LEAST_HALF,
    (Math.acos(Math.min(1, height)) * DAYS_IN_YEAR) / (2 * Math.PI),
  );
  const north = HOTTEST.inland + HOTTEST.laterBySea * seaSide(clock);
  const hottest = south ? north + DAYS_IN_YEAR / 2 : north;
  return { last: dayIn(hottest - half), first: dayIn(hottest + half) };
}

const dayIn = (day: number) =>
  Math.round(((day % DAYS_IN_YEAR) + DAYS_IN_YEAR) % DAYS_IN_YEAR) % DAYS_IN_YEAR;
