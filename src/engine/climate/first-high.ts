import { type Day, type DaySpan, plus } from "../../base/index.ts";
import type { Climate } from "./climate.ts";

/** The step of the search in days, before the found one is narrowed down day by day. */
const LOOK_EVERY_DAYS = 7;

/** The first day of a span whose high reaches so much [°C], where highs do not cross it twice in a week; null where none does. */
export function firstHigh(climate: Climate, { from, to }: DaySpan, atC: number): Day | null {
  const reaches = (day: Day) => climate.air(day).highC >= atC;
  let day = from;
  while (day <= to && !reaches(day)) day = plus(day, LOOK_EVERY_DAYS);
  if (day > to + LOOK_EVERY_DAYS || !reaches(day)) return null;
  while (day > from && reaches(plus(day, -1))) day = plus(day, -1);
  return day <= to ? day : null;
}
