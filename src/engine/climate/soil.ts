import { DAYS_IN_YEAR } from "../../base/index.ts";
import { CLOCHE, FILM } from "../../crops/index.ts";
import type { Bed } from "../../garden/model/index.ts";

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

/**
 * Soil of each day of a year [°C]: the mean of the air of the days up to and including it, round the year, before the
 * limit at freezing.
 */
export function soilCurve(meanAirC: Float64Array): Float64Array {
  const soil = new Float64Array(DAYS_IN_YEAR);
  for (let i = 0; i < DAYS_IN_YEAR; i++) {
    let sum = 0;
    for (let back = 0; back < SOIL_AVERAGES_DAYS; back++)
      sum += meanAirC[(i - back + DAYS_IN_YEAR) % DAYS_IN_YEAR] ?? 0;
    soil[i] = sum / SOIL_AVERAGES_DAYS;
  }
  return soil;
}
