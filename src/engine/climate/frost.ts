import { type Day, plus } from "../../base/index.ts";
import type { FrostDates } from "../../garden/model/index.ts";
import { deviationsAt, ONE_IN_TEN, shareBelow } from "./normal.ts";

/**
 * The day by which all but that share of springs have had their last 32 °F (0 °C) night, rounded to a whole
 * day. `risk` between 0 and 1, both exclusive: 0.1 gives the late date, 0.5 the usual one. Each side of the
 * usual date has its own spread.
 * Source: a fitted normal, as the rows of the University of Delaware's Frost dates (Moyer, 1970) show.
 */
export function lastFrostAt(dates: FrostDates, risk: number): Day {
  return byShare(dates, 1 - risk);
}

/** The day before which that share of autumns have had their first 32 °F (0 °C) night: 0.1 gives the early date. Otherwise as lastFrostAt. */
export function firstFrostAt(dates: FrostDates, share: number): Day {
  return byShare(dates, share);
}

function byShare(dates: FrostDates, share: number): Day {
  const z = deviationsAt(share);
  const side = z < 0 ? dates.usual - dates.early : dates.late - dates.usual;
  return plus(dates.usual, (z * side) / ONE_IN_TEN);
}

/** The share of springs, 0 to 1, that still have a 32 °F (0 °C) night after the day. */
export function chanceOfFrostAfter(dates: FrostDates, day: Day): number {
  const side = day < dates.usual ? dates.usual - dates.early : dates.late - dates.usual;
  if (side === 0) return day < dates.usual ? 1 : 0;
  return 1 - shareBelow(((day - dates.usual) * ONE_IN_TEN) / side);
}

/**
 * Days from the usual first 32 °F night to the usual first 28 °F night, the killing frost.
 * Source: from memory, unchecked: about two weeks between the two in NOAA's freeze tables.
 */
export const DAYS_TO_KILLING_FROST = 14;

/**
 * The usual first killing frost, 28 °F (-2 °C), of an autumn: by the site's own dates of such nights, where it has
 * them, else so many days after the usual first frost.
 */
export function killingFrost(first: FrostDates, own: FrostDates | null): Day {
  return own ? own.usual : plus(first.usual, DAYS_TO_KILLING_FROST);
}

/** Shares as a gardener would say them, a number in a number, rising. */
const SPOKEN_ODDS = [
  ...[50, 30, 20, 15, 10, 8, 6, 5, 4, 3, 2].map((of) => ({ some: 1, of })),
  ...[3, 4, 5, 10].map((of) => ({ some: of - 1, of })),
];

/** Odds as a gardener says them, `1 spring in 10`, `2 springs in 3`; never a percentage. Below 1 in 50 "hardly any spring". */
export function sayOdds(chance: number, season: "spring" | "autumn"): string {
  if (chance < 0.02) return `hardly any ${season}`;
  if (chance > 0.95) return `nearly every ${season}`;
  const off = ({ some, of }: { some: number; of: number }) => Math.abs(some / of - chance);
  const { some, of } = SPOKEN_ODDS.reduce((best, each) => (off(each) < off(best) ? each : best));
  return `${some} ${season}${some === 1 ? "" : "s"} in ${of}`;
}
