import { type Day, plus } from "../../base/index.ts";
import type { FrostDates } from "../model/plan.ts";
import type { FrostNights, FrostSide, NightF, ThreeDates } from "./nights.ts";

/** Frost dates from a weather file, or none, with notes on them; null where the file has none. */
export type StationFrostDates = {
  readonly dates: FrostDates | "none";
  readonly notes: readonly string[];
} | null;

/** A garden's frost dates by its station: 32 °F nights of spring and autumn, and 28 °F nights of autumn. */
export type StationFrosts = {
  readonly last: StationFrostDates;
  readonly first: StationFrostDates;
  readonly killing: StationFrostDates;
};

/** Degrees between the nights a weather file dates [K in °F]. */
const STEP_F = 4;

type FrostDateQuery = {
  readonly side: FrostSide;
  readonly nightF: NightF;
  readonly colderF: number;
};

/**
 * The frost dates of a garden that is so much colder than its station [°F of difference]: it has its 32 °F night when
 * the station's thermometer shows 32 plus that difference. Interpolated linearly between the station's dates at 36, 32
 * and 28 °F, and extrapolated beyond them, rounded to whole days on the careful side. Where some years have no such
 * night, the careful date replaces the missing one, and a note says so.
 * Source: house rule: a colder garden has frost on the station's milder nights.
 */
export function stationFrosts(nights: FrostNights, colderF: number): StationFrosts {
  return {
    last: stationFrostDates(nights, { side: "last", nightF: 32, colderF }),
    first: stationFrostDates(nights, { side: "first", nightF: 32, colderF }),
    killing: stationFrostDates(nights, { side: "first", nightF: 28, colderF }),
  };
}

function stationFrostDates(nights: FrostNights, query: FrostDateQuery): StationFrostDates {
  const { side, nightF, colderF } = query;
  const given = nights[side][nightF];
  if (given === null) return null;
  const moved = interpolateNights(nights, query);
  const three = moved ?? given;
  const notes = colderF === 0 ? [] : [sayMoved(moved !== null, colderF)];
  const filled = cautiousFrostDates(three, side);
  if (filled === null) return { dates: "none", notes };
  const without = three.filter((day) => day === null).length;
  return { dates: filled, notes: without > 0 ? [...notes, sayWithout(without, side)] : notes };
}

function sayMoved(moved: boolean, colderF: number): string {
  const how = `a garden that much ${colderF > 0 ? "colder" : "warmer"} than the station`;
  return moved
    ? `moved for ${how}`
    : `not moved for ${how}: the file has no nights of other degrees`;
}

function sayWithout(without: number, side: FrostSide): string {
  const years = without === 1 ? "1 year in 10" : "half of the years or more";
  const stands = side === "last" ? "the later date" : "the earlier date";
  return `${years} go without; ${stands} stands in for the missing one`;
}

/** The nights of the two temperatures that the garden's own is between, or beyond. */
function interpolateNights(
  nights: FrostNights,
  { side, nightF, colderF }: FrostDateQuery,
): ThreeDates | null {
  if (colderF === 0) return nights[side][nightF];
  const target = nightF + colderF;
  const lower: NightF = target >= 32 ? 32 : 28;
  const [cold, warm] = [nights[side][lower], nights[side][lower === 32 ? 36 : 32]];
  if (cold === null || warm === null) return null;
  const share = (target - lower) / STEP_F;
  const at = (i: 0 | 1 | 2) => interpolateDay(cold[i], warm[i], { share, side });
  return sortThreeDates([at(0), at(1), at(2)]);
}

/** Where there is no colder night, the date of the warmer one is the careful one. */
function interpolateDay(
  cold: Day | null,
  warm: Day | null,
  { share, side }: { readonly share: number; readonly side: FrostSide },
): Day | null {
  if (share === 0) return cold;
  if (cold === null || warm === null) return warm ?? cold;
  const days = Math.round(share * (warm - cold) * 1e6) / 1e6;
  return plus(cold, side === "last" ? Math.ceil(days) : Math.floor(days));
}

/**
 * Beyond the file's nights, different slopes can cross, so dates are put in order; missing ones stay where they are.
 */
function sortThreeDates(three: ThreeDates): ThreeDates {
  const sorted = three.filter((day) => day !== null).sort((a, b) => a - b);
  let next = 0;
  const each = (day: Day | null) => (day === null ? null : (sorted[next++] ?? day));
  return [each(three[0]), each(three[1]), each(three[2])];
}

function cautiousFrostDates([early, usual, late]: ThreeDates, side: FrostSide): FrostDates | null {
  if (side === "last") {
    if (late === null) return null;
    const middle = usual ?? late;
    return { early: early ?? middle, usual: middle, late, given: 3 };
  }
  if (early === null) return null;
  const middle = usual ?? early;
  return { early, usual: middle, late: late ?? middle, given: 3 };
}
