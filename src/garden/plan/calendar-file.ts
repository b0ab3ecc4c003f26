import ICAL from "ical.js";
import { type Day, type DaySpan, dayAt, MS_PER_DAY, partsOf, plus } from "../../base/index.ts";
import { type Budget, mergedSpans, type RepeatRule, repeatedDays } from "./repeating.ts";

/** A shorter event is an appointment and not an absence [ms]. Source: house rule: most of a day and a night. */
const LEAST_MS = 20 * 3_600_000;

/** How many days, weeks or months of repeating events a file may ask to be looked at. Source: house rule; a hundred that come every day of a season and more. */
const MOST_PERIODS = 100_000;

/**
 * The days away in a calendar file, and how many of its events repeat in a way that is not read, such as every hour or by
 * weeks of the year. `tooMuch`: there is more in it than is looked at, and the days are not all.
 */
export type CalendarDays = {
  readonly spans: readonly DaySpan[];
  readonly unread: number;
  readonly tooMuch: boolean;
};

/**
 * The days that the events of an iCalendar file (RFC 5545) take up within a span, both ends inclusive, in day order, those
 * that touch as one; nothing but the days is taken from an event. All-day events count as they are, timed ones of twenty
 * hours and more by the garden's clock; shorter ones, cancelled ones and to-dos do not count. Null where the text is
 * not an iCalendar file.
 */
export function daysIn(text: string, clock: string, within: DaySpan): CalendarDays | null {
  try {
    const calendar = new ICAL.Component(ICAL.parse(text));
    return calendar.name === "vcalendar" ? daysOf(calendar, clock, within) : null;
  } catch {
    // The parser throws errors of its own, and other errors at an event without a start or with an invalid rule.
    return null;
  }
}

/** What reading the events of a file needs. */
type FileContext = {
  readonly clock: string;
  readonly within: DaySpan;
  readonly budget: Budget;
  /** For each event's id the starts that stand in the file by themselves. */
  readonly apart: ReadonlyMap<string, ReadonlySet<string>>;
};

function daysOf(calendar: ICAL.Component, clock: string, within: DaySpan): CalendarDays {
  const events = calendar.getAllSubcomponents("vevent");
  const budget: Budget = { left: MOST_PERIODS };
  const context = { clock, within, budget, apart: startsApart(events) };
  let unread = 0;
  const spans = events.flatMap((event): readonly DaySpan[] => {
    const found = spansOf(event, context);
    if (found === "unread") unread += 1;
    return typeof found === "string" ? [] : found;
  });
  return { spans: mergedSpans(spans, within), unread, tooMuch: budget.left < 0 };
}

function startsApart(events: readonly ICAL.Component[]): FileContext["apart"] {
  const apart = new Map<string, Set<string>>();
  for (const event of events) {
    const at = timeOf(event, "recurrence-id");
    const uid = String(event.getFirstPropertyValue("uid"));
    if (at) apart.set(uid, (apart.get(uid) ?? new Set()).add(startKey(at)));
  }
  return apart;
}

/**
 * The spans of an event that may touch the days asked for; none of one that is too short, without looking at how it
 * repeats. Why not where they can't be told.
 */
function spansOf(
  event: ICAL.Component,
  context: FileContext,
): readonly DaySpan[] | "unread" | "too much" {
  const start = timeOf(event, "dtstart");
  if (start === null) throw new RangeError("an event has a start");
  const status = String(event.getFirstPropertyValue("status") ?? "");
  const lastsMs = lengthOf(event, start);
  if (status.toUpperCase() === "CANCELLED" || lastsMs < LEAST_MS) return [];
  const starts = startsOf(event, { start, lastsMs }, context);
  if (typeof starts === "string") return starts;
  return starts.map((each) => spanFrom(each, lastsMs, context.clock));
}

function spanFrom(start: ICAL.Time, lastsMs: number, clock: string): DaySpan {
  if (start.isDate) {
    const from = dayOfDate(start);
    return { from, to: plus(from, Math.round(lastsMs / MS_PER_DAY) - 1) };
  }
  const from = start.toUnixTime() * 1000;
  return { from: dayAt(from, clock), to: dayAt(from + lastsMs - 1, clock) };
}

/** How long an event lasts [ms]: to its end, else its duration, else a day where it has no hours. */
function lengthOf(event: ICAL.Component, start: ICAL.Time): number {
  const end = timeOf(event, "dtend");
  if (end)
    return start.isDate
      ? (dayOfDate(end) - dayOfDate(start)) * MS_PER_DAY
      : (end.toUnixTime() - start.toUnixTime()) * 1000;
  const duration = event.getFirstPropertyValue("duration");
  if (duration instanceof ICAL.Duration) return duration.toSeconds() * 1000;
  return start.isDate ? MS_PER_DAY : 0;
}

type FirstOccurrence = { readonly start: ICAL.Time; readonly lastsMs: number };

/** Where an event begins each time: as its rule and its list of days say, but for those left out or standing apart. */
function startsOf(
  event: ICAL.Component,
  { start, lastsMs }: FirstOccurrence,
  { within, budget, apart }: FileContext,
): readonly ICAL.Time[] | "unread" | "too much" {
  if (timeOf(event, "recurrence-id")) return [start];
  const first = dayOfDate(start);
  const found = event.getFirstPropertyValue("rrule");
  const rule = found instanceof ICAL.Recur ? ruleOf(found, start) : null;
  if (rule === "unread") return rule;
  const before = Math.ceil(lastsMs / MS_PER_DAY) + 1;
  const around = { from: plus(within.from, -before), to: plus(within.to, 1) };
  const days = rule === null ? [first] : repeatedDays(first, rule, around, budget);
  if (days === null) return "too much";
  const listed = timesOf(event, "rdate");
  const gone = new Set(timesOf(event, "exdate").map(startKey));
  const others = apart.get(String(event.getFirstPropertyValue("uid")));
  const until = found instanceof ICAL.Recur ? found.until : null;
  return [...days.map((day) => onDay(start, day)), ...listed].filter(
    (each) =>
      !gone.has(startKey(each)) &&
      !others?.has(startKey(each)) &&
      (until == null || until.isDate || each.toUnixTime() <= until.toUnixTime()),
  );
}

const NAMED_FREQUENCIES = ["DAILY", "WEEKLY", "MONTHLY", "YEARLY"] as const;

/** A rule by the days it names; `unread` where it goes by hours, or by days or weeks of the year. */
function ruleOf(rule: ICAL.Recur, start: ICAL.Time): RepeatRule | "unread" {
  const freq = NAMED_FREQUENCIES.find((each) => each === rule.freq);
  const parts = (name: string): readonly (string | number)[] => {
    const values: unknown = rule.getComponent(name);
    return Array.isArray(values) ? values : [];
  };
  if (!freq || parts("BYYEARDAY").length > 0 || parts("BYWEEKNO").length > 0) return "unread";
  const until = rule.until?.isDate === false ? rule.until.convertToZone(start.zone) : rule.until;
  return {
    freq,
    interval: Math.max(1, rule.interval),
    count: rule.count ?? null,
    until: until ? dayOfDate(until) : null,
    byDay: parts("BYDAY").map(String),
    byMonthDay: parts("BYMONTHDAY").map(Number),
    byMonth: parts("BYMONTH").map(Number),
    bySetPos: parts("BYSETPOS").map(Number),
    weekStart: ((rule.wkst + 5) % 7) + 1,
  };
}

/** The same hour on another day. */
function onDay(start: ICAL.Time, day: Day): ICAL.Time {
  const { year, month, date } = partsOf(day);
  const time = start.clone();
  time.year = year;
  time.month = month;
  time.day = date;
  return time;
}

function timeOf(event: ICAL.Component, name: string): ICAL.Time | null {
  const value = event.getFirstPropertyValue(name);
  return value instanceof ICAL.Time ? value : null;
}

function timesOf(event: ICAL.Component, name: string): readonly ICAL.Time[] {
  return event
    .getAllProperties(name)
    .flatMap((property) => property.getValues())
    .map((value) => (value instanceof ICAL.Period ? value.start : value))
    .filter((value) => value instanceof ICAL.Time);
}

/** By which two starts are the same: the day, or the instant. */
const startKey = (time: ICAL.Time) =>
  time.isDate ? `day ${dayOfDate(time)}` : String(time.toUnixTime());

const dayOfDate = ({ year, month, day }: ICAL.Time): Day =>
  (Date.UTC(year, month - 1, day) / MS_PER_DAY) as Day;
