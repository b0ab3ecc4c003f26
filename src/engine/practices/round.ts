import { type Day, dayOrThrow, plus } from "../../base/index.ts";

/** A Saturday from which every other one is counted. */
const A_SATURDAY = dayOrThrow(2000, 1, 1);
const FORTNIGHT = 14;

/** The last of every other Saturday on or before a day, the same for every garden and year. */
export function everyOtherSaturday(day: Day): Day {
  const since = (day - A_SATURDAY) % FORTNIGHT;
  return plus(day, since < 0 ? -since - FORTNIGHT : -since);
}
