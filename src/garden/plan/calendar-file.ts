import ICAL from "ical.js";
import { type Day, type DaySpan, dayAt, MS_PER_DAY, plus } from "../../base/index.ts";

/** A shorter event is an appointment and not an absence [ms]. Source: house rule: most of a day and a night. */
const LEAST_MS = 20 * 3_600_000;

/**
 * The most occurrences of one event that are looked at, before and in the span. Source: house rule; ten years of every
 * day.
 */
const MOST_OCCURRENCES = 3660;

/**
 * The days that the events of an iCalendar file (RFC 5545) take up within a span, both ends inclusive, in day order and
 * without repeats; nothing but the days is taken from an event. All-day events count as they are, timed ones of twenty
 * hours and more by the garden's clock; shorter ones, cancelled ones and to-dos do not count. Null where the text is
 * not an iCalendar file.
 */
export function spansIn(text: string, clock: string, within: DaySpan): readonly DaySpan[] | null {
  try {
    const calendar = new ICAL.Component(ICAL.parse(text));
    return calendar.name === "vcalendar" ? spansOf(calendar, clock, within) : null;
  } catch {
    // The parser throws errors of its own, and other errors at an event without a start or with an invalid rule.
    return null;
  }
}

function spansOf(calendar: ICAL.Component, clock: string, within: DaySpan): readonly DaySpan[] {
  const events = calendar
    .getAllSubcomponents("vevent")
    .map((component) => new ICAL.Event(component));
  const exceptions = events.filter((event) => event.isRecurrenceException());
  const spans = events
    .filter((event) => !event.isRecurrenceException())
    .flatMap((event) => {
      for (const each of exceptions) if (each.uid === event.uid) event.relateException(each);
      return occurrences(event, clock, within);
    })
    .filter(({ from, to }) => from <= to && to >= within.from && from <= within.to)
    .sort((a, b) => a.from - b.from || a.to - b.to);
  return spans.filter(
    (span, i) => i === 0 || span.from !== spans[i - 1]?.from || span.to !== spans[i - 1]?.to,
  );
}

/** The spans of an event, one for each occurrence up to the end of the days asked for. */
function occurrences(event: ICAL.Event, clock: string, within: DaySpan): readonly DaySpan[] {
  if (!event.isRecurring()) return spanOf(event, event.startDate, event.endDate, clock);
  const spans: DaySpan[] = [];
  const times = event.iterator();
  for (let count = 0; count < MOST_OCCURRENCES; count++) {
    const next = times.next();
    if (!next) break;
    const { item, startDate, endDate } = event.getOccurrenceDetails(next);
    const [span] = spanOf(item, startDate, endDate, clock);
    if (span && span.from > within.to) break;
    if (span) spans.push(span);
  }
  return spans;
}

function spanOf(
  event: ICAL.Event,
  start: ICAL.Time,
  end: ICAL.Time,
  clock: string,
): readonly DaySpan[] {
  const status = event.component.getFirstPropertyValue("status");
  if (String(status ?? "").toUpperCase() === "CANCELLED") return [];
  if (start.isDate) {
    const from = dayOfDate(start);
    return [{ from, to: plus(dayOfDate(end), -1) }];
  }
  const [from, to] = [start.toUnixTime() * 1000, end.toUnixTime() * 1000];
  if (to - from < LEAST_MS) return [];
  return [{ from: dayAt(from, clock), to: dayAt(to - 1, clock) }];
}

const dayOfDate = ({ year, month, day }: ICAL.Time): Day =>
  (Date.UTC(year, month - 1, day) / MS_PER_DAY) as Day;
