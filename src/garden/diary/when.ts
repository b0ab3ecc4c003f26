import { type Day, dayOf, partsOf, plus, WEEKDAYS, weekdayOf } from "../../base/index.ts";
import { readWrittenDate } from "../plan/dates.ts";
import { countFrom } from "./counts.ts";

/** Days back that a line may speak of. Source: house rule; what is told later than that is told on its own day. */
const BACK_DAYS = 100;
/** Days ahead to which a job may be put off. Source: house rule; more is another season's. */
const AHEAD_DAYS = 200;

const WEEKDAY = "(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?";
const YESTERDAY = /(?:^|(?<!since),? )yesterday(?: (?:morning|afternoon|evening))?(?=[ ,]|$)/;
const ON_WEEKDAY = new RegExp(`(?:^|,? )(?:on|last) (?<weekday>${WEEKDAY})(?=[ ,]|$)`);
const ON_DATE = /,? on (?:the )?(?<date>\d{1,2})(?:st|nd|rd|th)$/;
const ON_DAY =
  /,? on (?:the )?(?<day>\d{1,2}(?:st|nd|rd|th)? (?:of )?[a-z]{3,9}|[a-z]{3,9} \d{1,2}(?:st|nd|rd|th)?)$/;

/** A weekday or a date that a line begins with. */
const FRONT_WEEKDAY = new RegExp(
  `^(?:on |last )?(?<weekday>${WEEKDAY})(?:,? \\d{1,2}(?:st|nd|rd|th)?)?(?: morning| afternoon| evening| am| pm| a\\.m\\.| p\\.m\\.)?(?:[.:,]+ *(?:- )?| - | (?=(?:i|we)\\b))(?=\\S)`,
);
const MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";
const LAST_DATE = new RegExp(
  `(?<! until| till| til| to| since| by| before| after| for| of| from| on| the)(?:,)? (?<date>\\d{1,2}(?:st|nd|rd|th)? ${MONTH}|${MONTH} \\d{1,2}(?:st|nd|rd|th)?)$`,
);
const FRONT_DATE = new RegExp(
  `^(?:on )?(?:the )?(?<date>\\d{1,2}(?:st|nd|rd|th)? (?:of )?${MONTH}|${MONTH} \\d{1,2}(?:st|nd|rd|th)?)(?:[.:,] *(?:- )?| - | )(?=\\S)`,
);
/** `5th: peas up`. */
const FRONT_NTH = /^(?:on )?(?:the )?(?<date>\d{1,2})(?:st|nd|rd|th)(?:[.:,] *(?:- )?| - )(?=\S)/;
/** `3/5`, which is no fraction of something. */
const FRONT_FIGURES =
  /^(?<date>\d{1,2}\/\d{1,2}(?:\/\d{2,4})?)[.:,]? +(?:- )?(?!(?:an? |of |in |"|inch|cup|ft|lb|kg|gal))/;

/** What a line says without the day it begins with, and that day; or why nobody knows which day that is. */
export function withFrontDay(
  text: string,
  day: Day,
): { readonly text: string; readonly day: Day } | { readonly why: string } {
  const figures = FRONT_FIGURES.exec(text)?.groups?.date;
  const read = figures === undefined ? null : readWrittenDate(figures);
  if (read && "wrong" in read)
    return { why: `${read.wrong.is}: ${read.wrong.shouldBe.replace("Write", "write")}` };
  const weekday = FRONT_WEEKDAY.exec(text)?.groups?.weekday;
  if (weekday !== undefined) return cut(text, FRONT_WEEKDAY, weekdayAround(day, weekday, -1));
  const nth = FRONT_NTH.exec(text)?.groups?.date;
  const nthDay = nth === undefined ? null : dateBehind(Number(nth), day);
  if (nthDay !== null) return cut(text, FRONT_NTH, nthDay);
  const date = FRONT_DATE.exec(text)?.groups?.date;
  const found = date === undefined ? null : dayBehind(date, day);
  return found === null ? { text, day } : cut(text, FRONT_DATE, found);
}

/** What a clause says, without the day it names, and that day; its line's own where it names none that lies behind it. */
export function withOwnDay(text: string, day: Day): { readonly text: string; readonly day: Day } {
  if (YESTERDAY.test(text)) return cut(text, YESTERDAY, plus(day, -1));
  const weekday = ON_WEEKDAY.exec(text)?.groups?.weekday;
  if (weekday !== undefined) return cut(text, ON_WEEKDAY, weekdayAround(day, weekday, -1));
  const last = LAST_DATE.exec(text)?.groups?.date;
  const behind = last === undefined ? null : dayBehind(last, day);
  if (behind !== null) return cut(text, LAST_DATE, behind);
  const date = ON_DATE.exec(text)?.groups?.date;
  const named = date === undefined ? ON_DAY.exec(text)?.groups?.day : undefined;
  const found = date === undefined ? dayBehind(named ?? "", day) : dateBehind(Number(date), day);
  return found === null ? { text, day } : cut(text, date === undefined ? ON_DAY : ON_DATE, found);
}

const cut = (text: string, pattern: RegExp, day: Day) => ({
  text: text.replace(pattern, "").replace(/^[ ,]+/, ""),
  day,
});

/** The day of that name from six days before to the day itself, or in the week from the day after. */
function weekdayAround(day: Day, name: string, side: -1 | 1): Day {
  const wanted = WEEKDAYS.findIndex((each) => each.toLowerCase().startsWith(name.slice(0, 3))) + 1;
  const far = ((((wanted - weekdayOf(day)) * side) % 7) + 7) % 7;
  return plus(day, side * (side === 1 && far === 0 ? 7 : far));
}

/** The newest day of that date in its month, no later than a day. */
function dateBehind(date: number, day: Day): Day | null {
  const { year, month } = partsOf(day);
  const before = month === 1 ? dayOf(year - 1, 12, date) : dayOf(year, month - 1, date);
  const days = [dayOf(year, month, date), before];
  return days.find((each) => each !== null && each <= day) ?? null;
}

/** The days of that date in the year of a day and in the years beside it. */
function daysNear(written: string, day: Day): readonly Day[] {
  const read = readWrittenDate(written);
  if ("wrong" in read) return [];
  const { year } = partsOf(day);
  const years = read.ok.year === null ? [year - 1, year, year + 1] : [read.ok.year];
  return years
    .map((each) => dayOf(each, read.ok.month, read.ok.date))
    .filter((each) => each !== null);
}

/** The day of a written date in the weeks behind a day, or that day itself; null for what is none. */
export function dayBehind(written: string, day: Day): Day | null {
  return daysNear(written, day).find((each) => each <= day && each >= day - BACK_DAYS) ?? null;
}

/**
 * The day until which something waits: a date, a weekday, a month's first, `next week`, `2 weeks`. Null for what is none,
 * or does not lie ahead of the day.
 */
export function dayAhead(written: string, day: Day): Day | null {
  const text = written
    .replace(/^(?:about|at least|the) /, "")
    .replace(/ more(?= )/, "")
    .replace(/^weekend$/, "saturday");
  const many =
    /^(?:another )?(?:(?<count>\d{1,2}|a|an|one|two|three|four|five|six|ten) )?(?<unit>day|week|fortnight)s?$/.exec(
      text,
    )?.groups;
  if (many) return plus(day, (countFrom(many.count ?? "a") ?? 1) * (DAYS_IN[many.unit ?? ""] ?? 1));
  if (text === "next week") return plus(day, 7);
  if (text === "tomorrow") return plus(day, 1);
  const weekday = new RegExp(`^(?:next )?(${WEEKDAY})$`).exec(text)?.[1];
  if (weekday !== undefined) return weekdayAround(day, weekday, 1);
  const days = [...daysNear(text, day), ...daysNear(`1 ${text}`, day), ...dateAhead(text, day)];
  return days.find((each) => each > day && each <= day + AHEAD_DAYS) ?? null;
}

/** `20th`: the next day of that date in its month. */
function dateAhead(text: string, day: Day): readonly Day[] {
  const date = Number(/^(\d{1,2})(?:st|nd|rd|th)$/.exec(text)?.[1] ?? 0);
  const { year, month } = partsOf(day);
  return [
    dayOf(year, month, date),
    dayOf(month === 12 ? year + 1 : year, (month % 12) + 1, date),
  ].filter((each) => each !== null);
}

const DAYS_IN: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14 };
