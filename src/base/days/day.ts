/**
 * A calendar day in the garden's own zone, as the count of days since 1 January 1970. A whole number, so that days can
 * be added and no clock change matters.
 */
export type Day = number & { readonly __day: unique symbol };

/** Days from the first to the last, both inclusive. */
export type DaySpan = { readonly from: Day; readonly to: Day };

/** Monday 1 to Sunday 7, as ISO 8601 numbers them. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** English month names in order, January first. */
export const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** English weekday names in order, Monday first (ISO 8601). */
export const WEEKDAYS = [
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
  "Sunday",
] as const;

/** Milliseconds of a day in UTC, which has no clock changes. */
export const MS_PER_DAY = 86_400_000;

/** The day of that year, month (1 to 12) and day of the month (1 to 31), or null where the calendar has no such day. */
export function dayOf(year: number, month: number, date: number): Day | null {
  const ms = Date.UTC(year, month - 1, date);
  const back = new Date(ms);
  const same =
    back.getUTCFullYear() === year &&
    back.getUTCMonth() === month - 1 &&
    back.getUTCDate() === date;
  return same ? ((ms / MS_PER_DAY) as Day) : null;
}

/** The same, for days that are known to exist. Throws on a day the calendar does not have: that is a programmer's mistake. */
export function dayOrThrow(year: number, month: number, date: number): Day {
  const day = dayOf(year, month, date);
  if (day === null) throw new RangeError(`no such day: ${year}-${month}-${date}`);
  return day;
}

/** Year, month (1 to 12) and day of the month of a day. */
export function partsOf(day: Day): { year: number; month: number; date: number } {
  const at = new Date(day * MS_PER_DAY);
  return { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, date: at.getUTCDate() };
}

/** The day that many days later (earlier where negative). Fractions are rounded to the nearest day. */
export function plus(day: Day, days: number): Day {
  return (day + Math.round(days)) as Day;
}

/** The weekday of a day. */
export function weekdayOf(day: Day): Weekday {
  return (((((day + 3) % 7) + 7) % 7) + 1) as Weekday;
}

/** The first day of the month that many months later (earlier where negative) than the day's own month. */
export function monthStart(day: Day, months = 0): Day {
  const { year, month } = partsOf(day);
  return (Date.UTC(year, month - 1 + months, 1) / MS_PER_DAY) as Day;
}

/** The whole day halfway between two, the earlier one where the middle falls between days. */
export function midway(a: Day, b: Day): Day {
  return Math.floor((a + b) / 2) as Day;
}

/** The earliest of some days. Throws when there are none. */
export function earliest(...days: readonly Day[]): Day {
  let [first] = days;
  if (first === undefined) throw new RangeError("no days");
  for (const day of days) if (day < first) first = day;
  return first;
}

/** The latest of some days. Throws when there are none. */
export function latest(...days: readonly Day[]): Day {
  let [last] = days;
  if (last === undefined) throw new RangeError("no days");
  for (const day of days) if (day > last) last = day;
  return last;
}

/** ISO 8601, `2027-05-06`. */
export function isoOf(day: Day): string {
  return new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
}

/** The day written `2027-05-06`, or null where the text is not one or the calendar has no such day. */
export function dayFromIso(text: string): Day | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return found ? dayOf(Number(found[1]), Number(found[2]), Number(found[3])) : null;
}

/** How a person says it: `6 May`. With the year where asked: `6 May 2027`. */
export function sayDay(day: Day, withYear = false): string {
  const { year, month, date } = partsOf(day);
  const name = MONTHS[month - 1] ?? "";
  const short = name.length > 4 ? name.slice(0, 3) : name;
  return withYear ? `${date} ${short} ${year}` : `${date} ${short}`;
}

/** The day with its weekday: `Sunday 23 May`. */
export function sayWeekday(day: Day): string {
  return `${WEEKDAYS[weekdayOf(day) - 1] ?? ""} ${sayDay(day)}`;
}

/** The weekday's first three letters: `Sun`. */
export function shortWeekday(day: Day): string {
  return (WEEKDAYS[weekdayOf(day) - 1] ?? "").slice(0, 3);
}

/** Days of a year as the climate counts them. */
export const DAYS_IN_YEAR = 365;

/** Days from 1 March of the year 0 to 1 January 1970, and of 400 years. */
const SINCE_MARCH = 719_468;
const ERA = 146_097;

/**
 * 0 for 1 January to 364 for 31 December; 29 February counts as the 28th. Called more often than anything else, so it
 * uses whole numbers only.
 * Source: the proleptic Gregorian calendar, counted from March so that a leap day is the last of its year.
 */
export function dayOfYear(day: Day): number {
  const inEra = (((day + SINCE_MARCH) % ERA) + ERA) % ERA;
  const year = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) /
      DAYS_IN_YEAR,
  );
  const sinceMarch = inEra - (DAYS_IN_YEAR * year + Math.floor(year / 4) - Math.floor(year / 100));
  if (sinceMarch >= 306) return Math.min(sinceMarch - 306, 58);
  return sinceMarch + 59;
}
