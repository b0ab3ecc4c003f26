import { DAYS_IN_YEAR } from "../../base/index.ts";
import { CLOCHE, FILM } from "../../crops/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import type { AirCurves } from "./air.ts";
import { type DayAir, meanC } from "./day-air.ts";
import { MIDDLE_LATITUDE } from "./glass.ts";
import { solarFromSwingMJ, topOfAirMJ } from "./radiation.ts";

/** Degrees [K] that film or fabric laid on it warms a bed's soil, at least. Source: FILM. */
const FILM_WARMS_K = FILM.warmsK.film.value[0];

/** Degrees [K] that cloches warm the soil under them, at least. Source: CLOCHE. */
const CLOCHES_WARM_K = CLOCHE.warmsK.soil.value[0];

/** What warms a bed's soil, the warmer of two, and by how much [K]; open soil is as it is. */
export function soilWarmedBy(bed: Bed | null): { readonly by: string; readonly warmerK: number } {
  if (bed?.warmed) return { by: "film", warmerK: FILM_WARMS_K };
  if (bed?.covers.includes("cloche")) return { by: "cloches", warmerK: CLOCHES_WARM_K };
  return { by: "open", warmerK: 0 };
}

/** Days of air that the soil at seed depth averages. Source: Zheng, Hunt and Running, Climate Research 2, 1993, from memory. */
export const SOIL_AVERAGES_DAYS = 11;

/** Seed depth in open soil, where only one depth is asked for [m]. Source: house rule, two inches. */
export const SEED_DEPTH_M = 0.05;

/**
 * The least soil temperature at seed depth [°C]: it stays there while the soil freezes and under snow. Source: house
 * rule.
 */
export const FROZEN_C = 0;

/** What bare garden ground throws back of the sun. Source: house rule, between FAO 56's 0.05 of wet bare soil and 0.23 of grass. */
const BARE_ALBEDO = 0.15;

/** The sun that ground takes up on a day on which it is as warm as the air [MJ m⁻² day⁻¹], and what part of half the day's swing each one more adds. */
const [EVEN_MJ, PER_MJ] = [14, 1 / 20] as const;

/**
 * How much warmer than the air the sun makes bare ground over a day and night [K]. In winter the relation has it colder; it is
 * then as warm as the air, since deeper ground gives up its warmth.
 * Source: Potter and Williams, Agronomy Journal 86, 1994, as in SWAT's theory, 2009, eq. 1:1.3.9 and 1:1.3.10, with the sun of
 * FAO 56, eq. 50; never colder, house rule. tests/sources/soil-and-air-2015.csv has three stations beside it.
 */
export function sunWarmsK(air: DayAir, topMJ: number): number {
  const takenUpMJ = (1 - BARE_ALBEDO) * solarFromSwingMJ(air, topMJ);
  return Math.max(0, ((takenUpMJ - EVEN_MJ) * PER_MJ * (air.highC - air.lowC)) / 2);
}

/**
 * Soil of each day of a year [°C], 1 January first: the mean of the bare ground of the days up to and including it, round the
 * year, before the limit at freezing. `latitude`: degrees; the middle latitudes of its half of the earth where it is null.
 */
export function soilCurve({ lowC, highC }: AirCurves, latitude: number | null): Float64Array {
  const at = latitude ?? (isSouthern(highC) ? -MIDDLE_LATITUDE : MIDDLE_LATITUDE);
  const ground = lowC.map((low, i) => {
    const air = { lowC: low, highC: highC[i] ?? 0 };
    return meanC(air) + sunWarmsK(air, topOfAirMJ(at, i + 1));
  });
  return ground.map((_, i) => meanUpTo(ground, i));
}

const isSouthern = (highC: Float64Array) =>
  (highC[0] ?? 0) > (highC[Math.floor(DAYS_IN_YEAR / 2)] ?? 0);

function meanUpTo(curve: Float64Array, day: number): number {
  let sum = 0;
  for (let back = 0; back < SOIL_AVERAGES_DAYS; back++)
    sum += curve[(day - back + DAYS_IN_YEAR) % DAYS_IN_YEAR] ?? 0;
  return sum / SOIL_AVERAGES_DAYS;
}
