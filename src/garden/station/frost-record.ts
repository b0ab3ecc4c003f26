import { celsius } from "../../base/index.ts";
import type { NightF } from "../plan/nights.ts";
import {
  type DailyRecord,
  firstNights,
  lastNights,
  quantile,
  type SearchedYear,
} from "./record.ts";

/**
 * The dates of nights of a temperature: early, usual and late, as numbers of a year's days (see `dayNumberOf`); 10, 50
 * and 90 of 100 years have had one by then. Null where too many years had no such night. `years` counts those used,
 * `without` those of them that had no such night, `leftOut` those with too many nights missing, `cutOff` those whose
 * winter goes beyond the record's end or begins before its start.
 */
export type NightDates = {
  readonly early: number | null;
  readonly usual: number | null;
  readonly late: number | null;
  readonly years: number;
  readonly without: number;
  readonly leftOut: number;
  readonly cutOff: number;
};

/** Dates of the last nights before summer and of the first nights after it, for each temperature. */
export type FrostRecord = {
  readonly last: Readonly<Record<NightF, NightDates>>;
  readonly first: Readonly<Record<NightF, NightDates>>;
};

/**
 * Early, usual and late of some years' nights. `without` is the value of a year without such a night: before all others
 * (-Infinity) for last nights, after all others (Infinity) for first ones.
 * Source: NOAA NCDC, Climatography of the U.S. No. 20, Supplement 1: years with and without a freeze are one
 * distribution.
 */
export function nightDatesOf(searchedYears: readonly SearchedYear[], without: number): NightDates {
  const values = searchedYears.flatMap(({ night }) =>
    night === "left out" || night === "cut off" ? [] : [night === "none" ? without : night],
  );
  const count = (wanted: SearchedYear["night"]) =>
    searchedYears.filter(({ night }) => night === wanted).length;
  return {
    early: quantile(values, 0.1),
    usual: quantile(values, 0.5),
    late: quantile(values, 0.9),
    years: values.length,
    without: count("none"),
    leftOut: count("left out"),
    cutOff: count("cut off"),
  };
}

/** The dates of a station's own record, in day order, for growing years of that hemisphere. */
export function frostRecordOf(series: readonly DailyRecord[], south: boolean): FrostRecord {
  const last = (nightF: NightF) =>
    nightDatesOf(lastNights(series, { atMostC: celsius(nightF), south }), Number.NEGATIVE_INFINITY);
  const first = (nightF: NightF) =>
    nightDatesOf(
      firstNights(series, { atMostC: celsius(nightF), south }),
      Number.POSITIVE_INFINITY,
    );
  return {
    last: { 36: last(36), 32: last(32), 28: last(28) },
    first: { 36: first(36), 32: first(32), 28: first(28) },
  };
}
