import { type Day, partsOf, theDay } from "../days/day.ts";
import type { Fact } from "../diary/fact.ts";
import type { Bed, Plan } from "../plan/plan.ts";
import { curveThrough, meansOf, roughCurve, YEAR } from "./air.ts";

/** Degrees [K] that film or fabric laid on it warms a bed's soil. Source: house rule; the low end of what growers report. */
export const FILM_WARMS_K = 3;

/** Days for which a soil temperature that was measured corrects the estimate, fading to nothing. Source: house rule. */
export const MEASURED_LASTS_DAYS = 14;

/** Days of air that the soil at seed depth averages. Source: Zheng, Hunt and Running, Climate Research 2, 1993, from memory. */
const SOIL_AVERAGES_DAYS = 11;

/** Air and soil of a garden, day by day. */
export type Climate = {
  /** Whether the curve is the rough one, reckoned from frost dates and latitude alone. */
  readonly rough: boolean;
  /** Mean air temperature [°C] of a day. */
  readonly airC: (day: Day) => number;
  /** Soil at seed depth [°C] on a day in a bed, or in open ground where that is null. */
  readonly soilC: (day: Day, bed: Bed | null) => number;
};

/** 0 for 1 January to 364; 29 February counts as the 28th. */
function dayOfYear(day: Day): number {
  const { year, month, date } = partsOf(day);
  const plain = day - theDay(year, 1, 1);
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return leap && (month > 2 || (month === 2 && date === 29)) ? plain - 1 : plain;
}

function airCurve(plan: Plan): { curve: Float64Array; rough: boolean } {
  const means = meansOf(plan.site);
  if (means) return { curve: curveThrough(means), rough: false };
  const { latitude, lastFrost, firstFrost } = plan.site;
  const last = lastFrost ? dayOfYear(lastFrost.usual) : null;
  const first = firstFrost ? dayOfYear(firstFrost.usual) : null;
  return { curve: roughCurve(latitude, last, first), rough: true };
}

/** Running mean of the days up to and including each day, round the year. */
function trailing(curve: Float64Array): Float64Array {
  const soil = new Float64Array(YEAR);
  for (let i = 0; i < YEAR; i++) {
    let sum = 0;
    for (let back = 0; back < SOIL_AVERAGES_DAYS; back++)
      sum += curve[(i - back + YEAR) % YEAR] ?? 0;
    soil[i] = Math.max(0, sum / SOIL_AVERAGES_DAYS);
  }
  return soil;
}

/**
 * The garden's air and soil from its normals, or roughly from its frost dates where it gives none. Soil is the
 * mean of the eleven days' air up to the day, warmer under film, and put right by what was measured in the diary.
 */
export function climateOf(plan: Plan, facts: readonly Fact[]): Climate {
  const { curve, rough } = airCurve(plan);
  const soil = trailing(curve);
  const index = new Map<number, number>();
  const indexOf = (day: Day) => {
    const known = index.get(day);
    if (known !== undefined) return known;
    const fresh = dayOfYear(day);
    index.set(day, fresh);
    return fresh;
  };
  const estimate = (day: Day, bed: Bed | null) =>
    (soil[indexOf(day)] ?? 0) + (bed?.warmed ? FILM_WARMS_K : 0);
  const measured = facts
    .flatMap((fact) => (fact.kind === "measured" && fact.what === "soil" ? [fact] : []))
    .sort((a, b) => a.day - b.day);
  const correction = (day: Day, bed: Bed | null) => {
    const last = measured.findLast(
      (fact) =>
        day >= fact.day &&
        day < fact.day + MEASURED_LASTS_DAYS &&
        (fact.bed === null || fact.bed === bed?.key),
    );
    if (!last) return 0;
    const left = 1 - (day - last.day) / MEASURED_LASTS_DAYS;
    return (last.value.si - estimate(last.day, bed)) * left;
  };
  return {
    rough,
    airC: (day) => curve[indexOf(day)] ?? 0,
    soilC:
      measured.length === 0 ? estimate : (day, bed) => estimate(day, bed) + correction(day, bed),
  };
}
