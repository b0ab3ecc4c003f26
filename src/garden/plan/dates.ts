import {
  capital,
  type Day,
  type DaySpan,
  dayOf,
  joinWords,
  MONTHS,
  monthStart,
  nearest,
  type Problem,
  partsOf,
  plus,
  sayDay,
} from "../../base/index.ts";
import { type Code, diagnostic } from "./codes.ts";
import { sliceWords, type Words } from "./tree.ts";

/** Month (1 to 12) and date as written; `year` is null where it is not written. */
export type WrittenDate = {
  readonly month: number;
  readonly date: number;
  readonly year: number | null;
};

type DateFault = { readonly code: Code; readonly is: string; readonly shouldBe: string };
type DateResult<T> = { readonly ok: T } | { readonly wrong: DateFault };

const MONTH_NAMES = MONTHS.map((name) => name.toLowerCase());
const LEAP_YEAR = 2028;
const HOW = "Write a day such as 6 May";
const WEEKDAY = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,? +(?=\S)/;
const ABOUT = /^(?:about|around|~|c\.) *|^on +|^from +/;

/** The month (1 to 12) that a name or its beginning means (`Sept`, `oct`), or null; three letters at least. */
export function monthNamed(name: string): number | null {
  const small = name.toLowerCase().replace(/\.$/, "");
  if (small.length < 3) return null;
  const index = MONTH_NAMES.findIndex((month) => month.startsWith(small));
  return index < 0 ? null : index + 1;
}

/** The month and date that a text gives, or what is wrong with it. */
export function readWrittenDate(text: string): DateResult<WrittenDate> {
  const small = text.trim().toLowerCase().replace(ABOUT, "").replace(WEEKDAY, "");
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(small);
  if (iso) return checkedDate(Number(iso[2]), Number(iso[3]), Number(iso[1]), text);
  const figures = /^(\d{1,2})\s*[-/.]\s*(\d{1,2})\.?(?:[-/.]?\s*(\d{4}|\d{2}))?$/.exec(small);
  if (figures) return { wrong: bothReadings(Number(figures[1]), Number(figures[2]), text) };
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th|\.)? *(?:of )?([a-z]+)\.?(?:,? +(\d{4}))?$/.exec(
    small,
  );
  if (dayFirst) return dateWithMonthName(dayFirst[2] ?? "", dayFirst[1] ?? "", dayFirst[3], text);
  const monthFirst = /^([a-z]+)\.? +(\d{1,2})(?:st|nd|rd|th)?(?:,? +(\d{4}))?$/.exec(small);
  if (monthFirst)
    return dateWithMonthName(monthFirst[1] ?? "", monthFirst[2] ?? "", monthFirst[3], text);
  return { wrong: { code: "day-unclear", is: `${excerpt(text)} is not a day`, shouldBe: HOW } };
}

const excerpt = (text: string) => text.trim().slice(0, 60);

function dateWithMonthName(
  name: string,
  date: string,
  year: string | undefined,
  text: string,
): DateResult<WrittenDate> {
  const month = monthNamed(name);
  if (month !== null) return checkedDate(month, Number(date), year ? Number(year) : null, text);
  const near = nearest(name, [...MONTH_NAMES, ...MONTH_NAMES.map((month) => month.slice(0, 3))]);
  const right = near === null ? HOW : `Did you mean ${date} ${capital(near)}`;
  return { wrong: { code: "day-unclear", is: `${excerpt(text)} is not a day`, shouldBe: right } };
}

function checkedDate(
  month: number,
  date: number,
  year: number | null,
  text: string,
): DateResult<WrittenDate> {
  if (dayOf(year ?? LEAP_YEAR, month, date) !== null) return { ok: { month, date, year } };
  const is = `There is no ${excerpt(text)}`;
  return { wrong: { code: "no-such-day", is, shouldBe: "Write a day the calendar has" } };
}

/** `05-06` is 6 May for one reader and 5 June for another. */
function bothReadings(a: number, b: number, text: string): DateFault {
  const readings = [dayOf(LEAP_YEAR, a, b), dayOf(LEAP_YEAR, b, a)]
    .filter((day) => day !== null)
    .map((day) => sayDay(day));
  const both = [...new Set(readings)];
  if (both.length === 0)
    return { code: "no-such-day", is: `${excerpt(text)} is not a day`, shouldBe: HOW };
  return {
    code: "two-readings",
    is:
      both.length > 1
        ? `${excerpt(text)} can be ${joinWords(both, "or")}`
        : `${excerpt(text)} is in figures`,
    shouldBe: `Write ${joinWords(both, "or")}`,
  };
}

/**
 * The day of a month and date that falls in a season; with a year, that very day, in the season or not. 29 February in
 * a season without one is null. Where the ends of a season leave a day out or contain it twice, the earlier one is
 * taken.
 */
export function dayInSeason(season: DaySpan, { month, date, year }: WrittenDate): Day | null {
  if (year !== null) return dayOf(year, month, date);
  const first = partsOf(season.from).year;
  const days = [first, first + 1].map((y) => dayOf(y, month, date)).filter((d) => d !== null);
  const within = days.find((day) => day >= season.from && day <= season.to);
  return within ?? days.find((day) => day >= season.from - 2 && day <= season.to + 2) ?? null;
}

/**
 * What reading days needs: the season they fall in (null where it is not known) and the list that problems are added
 * to.
 */
export type DayReadContext = { readonly season: DaySpan | null; readonly problems: Problem[] };

/** The day that words give, or null: with a problem reported, or without one where the season is not known. */
export function readDay(words: Words, { season, problems }: DayReadContext): Day | null {
  const read = readWrittenDate(words.text);
  if ("wrong" in read) {
    problems.push(diagnostic(read.wrong.code, words.at, read.wrong.is, read.wrong.shouldBe));
    return null;
  }
  const day = season ? dayInSeason(season, read.ok) : null;
  if (season && day === null)
    problems.push(
      diagnostic("no-such-day", words.at, `There is no ${excerpt(words.text)} in this season`, HOW),
    );
  return day;
}

/**
 * The days that words give: one day, a span (`19 to 23 Jun`, `1 Aug to 14 Aug`, `28 Dec - 3 Jan`), or a month or a
 * third of it (`this October`, `early May`: the 1st to the 10th, `mid`: to the 20th, `late`: the rest). Null as for a
 * day. Problem: `span-backwards` where the end comes before the start.
 */
export function readSpan(words: Words, reading: DayReadContext): DaySpan | null {
  const month = readMonth(words.text);
  if ("ok" in month) return reading.season ? monthIn(reading.season, month.ok) : null;
  const hit = / *(?:\bto\b|\buntil\b|\btill\b|–|—| - ) */i.exec(words.text) ?? compact(words.text);
  if (!hit) {
    const day = readDay(words, reading);
    return day === null ? null : { from: day, to: day };
  }
  const end = sliceWords(words, hit.index + hit[0].length);
  const start = withBorrowedMonth(sliceWords(words, 0, hit.index), end);
  return spanBetween(start, end, words, reading);
}

/** `19-23 Jun`, `Jun 19-23`. */
function compact(text: string): { index: number; 0: string } | null {
  const found = /^(?:[a-z]+\.? )?\d{1,2}(-)\d{1,2}(?: [a-z]+\.?)?(?: \d{4})?$/i.exec(text);
  return found && /[a-z]/i.test(text) ? { index: text.indexOf("-"), 0: "-" } : null;
}

/** In `19 to 23 Jun` the first day takes the month of the second; spanBetween does the same for `Jun 19 to 23`. */
function withBorrowedMonth(start: Words, end: Words): Words {
  const month = /[a-z]{3,}.*$/i.exec(end.text)?.[0];
  return /^\d{1,2}$/.test(start.text) && month
    ? { ...start, text: `${start.text} ${month}` }
    : start;
}

function spanBetween(
  start: Words,
  end: Words,
  words: Words,
  reading: DayReadContext,
): DaySpan | null {
  const month = /^[a-z]+/i.exec(start.text)?.[0];
  const last = /^\d{1,2}$/.test(end.text) && month ? { ...end, text: `${end.text} ${month}` } : end;
  const from = readDay(start, reading);
  if (from === null && reading.season) return null;
  const to = readDay(last, reading);
  if (from === null || to === null) return null;
  if (to >= from) return { from, to };
  const written = readWrittenDate(last.text);
  const next = "ok" in written && written.ok.year === null ? yearLater(to) : null;
  if (next !== null && next - from <= 60) return { from, to: next };
  reading.problems.push(
    diagnostic(
      "span-backwards",
      words.at,
      `${excerpt(words.text)} ends before it begins`,
      "Swap the days",
    ),
  );
  return null;
}

function yearLater(day: Day): Day | null {
  const { year, month, date } = partsOf(day);
  return dayOf(year + 1, month, date);
}

type MonthPart = { readonly month: number; readonly year: number | null; readonly part: string };

function readMonth(text: string): DateResult<MonthPart> {
  const small = text.trim().toLowerCase();
  const found = /^(?:in |this )?(?:(early|mid|late)[ -])?([a-z]+)\.?(?: (\d{4}))?$/.exec(small);
  const month = monthNamed(found?.[2] ?? "");
  if (!found || month === null)
    return { wrong: { code: "day-unclear", is: `${excerpt(text)} is no month`, shouldBe: HOW } };
  return { ok: { month, year: found[3] ? Number(found[3]) : null, part: found[1] ?? "" } };
}

function monthIn(season: DaySpan, { month, year, part: third }: MonthPart): DaySpan | null {
  const middle = dayInSeason(season, { month, date: 15, year });
  if (middle === null) return null;
  const first = monthStart(middle);
  const last = plus(monthStart(middle, 1), -1);
  if (third === "early") return { from: first, to: plus(first, 9) };
  if (third === "mid") return { from: plus(first, 10), to: plus(first, 19) };
  return { from: third === "late" ? plus(first, 20) : first, to: last };
}
