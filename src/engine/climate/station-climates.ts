import type { Estimate } from "./estimate.ts";

/*
 * What climates are like before anything is known of one but its latitude and its side of a continent. Four numbers
 * describe each: the yearly means of daily lows and highs [°C], and how far each rises above it in summer [K].
 */

/**
 * Coasts that a sea to the west keeps mild, by their clock. Source: house rule, those of the British and Australian
 * stations and of the Pacific coast of tests/sources/climate-normals.csv; the others from memory, unchecked.
 */
const SEA_SIDE =
  /^(?:GB|Eire|Portugal|NZ|US\/Pacific|Atlantic\/.*|Australia\/.*|Pacific\/.*|Europe\/(?:London|Dublin|Belfast|Jersey|Guernsey|Isle_of_Man|Lisbon|Amsterdam|Brussels)|America\/(?:Los_Angeles|Vancouver|Tijuana|Santiago))$/;

/** How much a sea to the west keeps a place mild, 0 to 1, by its clock. Source: the rest of Europe, house rule: half way. */
export function seaSide(clock: string): number {
  if (SEA_SIDE.test(clock)) return 1;
  return clock.startsWith("Europe/") ? 0.5 : 0;
}

/** The latitude that the figures are given for [degrees]. */
const AT_LATITUDE = 45;

/** Degrees of latitude that a place without one may be off. Source: house rule. */
const LATITUDE_SD = 8;

/*
 * Mean lows, their rise, mean highs, their rise. Source: a regression on the 38 stations of
 * tests/sources/climate-normals.csv (NOAA NCEI, Met Office, Bureau of Meteorology); station-climates.test.ts repeats it.
 */
const INLAND = [4.44, 12.88, 15.62, 13.88] as const;
const PER_DEGREE = [-0.45, 0.13, -0.56, 0.17] as const;
const BY_THE_SEA = [3.91, -8.08, 1.35, -8.17] as const;
const LEFT = [
  [11.97, -4.59, 6.74, -5.89],
  [-4.59, 3.84, -2.16, 4.14],
  [6.74, -2.16, 6.47, -2.23],
  [-5.89, 4.14, -2.23, 5.89],
] as const;

/**
 * What is believed of a place's climate by its latitude [degrees] and clock alone: the means of lows, their rise to
 * summer, the means of highs, their rise.
 */
export function climateAt(latitude: number | null, clock: string): Estimate {
  const off = latitude === null ? 0 : Math.abs(latitude) - AT_LATITUDE;
  const unsure = latitude === null ? LATITUDE_SD ** 2 : 0;
  const sea = seaSide(clock);
  return {
    means: INLAND.map((at, i) => at + (PER_DEGREE[i] ?? 0) * off + (BY_THE_SEA[i] ?? 0) * sea),
    covariances: LEFT.map((row, i) =>
      row.map((each, j) => each + unsure * (PER_DEGREE[i] ?? 0) * (PER_DEGREE[j] ?? 0)),
    ),
  };
}
