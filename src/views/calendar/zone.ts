import {
  type ClockChange,
  clockChanges,
  type Day,
  dayAt,
  dayOrThrow,
  MS_PER_DAY,
  partsOf,
  plus,
  startOf,
  wallTimeAt,
  weekdayOf,
} from "../../base/index.ts";

const MS_PER_MINUTE = 60_000;
const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"] as const;

/** Zones that are the calendar's own, and need no description. */
const OWN: readonly string[] = ["UTC", "Etc/UTC"];

/** `20270508T090000` of a time written as the instant at which UTC shows it. */
const stampOf = (wallTime: number) =>
  new Date(wallTime).toISOString().slice(0, 19).replace(/[-:]/g, "");

/**
 * `;TZID=America/Denver:20270508T090000`, what stands behind the name of a property for an instant [ms since 1970 UTC] in a
 * zone; in UTC itself `:20270508T150000Z`.
 */
export function timeIn(clock: string, instant: number): string {
  if (OWN.includes(clock)) return `:${stampOf(instant)}Z`;
  return `;TZID=${clock}:${stampOf(wallTimeAt(instant, clock))}`;
}

/** Descriptions of zones by name and years, cached, because every feed of a garden needs the same. */
const cache = new Map<string, string>();
const MOST_CACHED = 100;

/**
 * The VTIMEZONE of a garden's clock for events between two instants [ms since 1970 UTC], each line ended by CRLF; empty for
 * UTC. What the clock does every year alike is one rule, anything else a change of its own, never a list of dates, which
 * Outlook misreads. It begins a year before the events, so that even the first has an observance that it falls in.
 * The offsets are Intl's, as all instants are, so that no description can contradict them.
 * Source: RFC 5545, section 3.6.5.
 */
export function zoneText(
  clock: string,
  { from, to }: { readonly from: number; readonly to: number },
): string {
  if (OWN.includes(clock)) return "";
  const [first, last] = [yearAt(from, clock) - 1, yearAt(to, clock) + 1];
  const key = `${clock} ${first} ${last}`;
  const known = cache.get(key);
  if (known !== undefined) return known;
  const text = writeZone(clock, first, last, from);
  if (cache.size >= MOST_CACHED) cache.clear();
  cache.set(key, text);
  return text;
}

const yearAt = (instant: number, clock: string) => partsOf(dayAt(instant, clock)).year;

function writeZone(clock: string, first: number, last: number, from: number): string {
  const begins = startOf(dayOrThrow(first, 1, 1), clock);
  const changes = clockChanges(begins, startOf(dayOrThrow(last + 1, 1, 1), clock), clock);
  const rules = rulesOf(changes, last);
  const offset = wallTimeAt(begins, clock) - begins;
  const since: Rule = { at: -offset, before: offset, after: offset, daylight: false, every: null };
  const all = (changes[0]?.at ?? Number.POSITIVE_INFINITY) > from ? [since, ...rules] : rules;
  const lines = ["BEGIN:VTIMEZONE", `TZID:${clock}`, ...all.flatMap(linesOf), "END:VTIMEZONE"];
  return lines.map((line) => `${line}\r\n`).join("");
}

/** A change that comes once, or every year alike. */
type Rule = ClockChange & { readonly daylight: boolean; readonly every: string | null };

/** Changes that come every year alike, with all weeks of the month that fit them, the last (-1) first. */
type Series = { readonly changes: ClockChange[]; weeks: readonly number[] };

function rulesOf(changes: readonly ClockChange[], lastYear: number): readonly Rule[] {
  const all: Series[] = [];
  for (const change of changes) {
    const known = all.find((series) => goesOn(series, change));
    const weeks = weeksOf(change);
    if (!known) all.push({ changes: [change], weeks });
    else {
      known.changes.push(change);
      known.weeks = known.weeks.filter((week) => weeks.includes(week));
    }
  }
  return all.flatMap((series) => {
    const [first] = series.changes;
    return first
      ? [{ ...first, daylight: isDaylight(first, changes), every: everyYear(series, lastYear) }]
      : [];
  });
}

function goesOn({ changes, weeks }: Series, change: ClockChange): boolean {
  const last = changes.at(-1);
  if (!last || last.before !== change.before || last.after !== change.after) return false;
  const [a, b] = [onsetOf(last), onsetOf(change)];
  const same = a.month === b.month && a.weekday === b.weekday && a.time === b.time;
  return same && a.year + 1 === b.year && weeksOf(change).some((week) => weeks.includes(week));
}

/** The wall time at which a change comes, by the clock that stood before it. */
function onsetOf({ at, before }: ClockChange) {
  const day = Math.floor((at + before) / MS_PER_DAY) as Day;
  return { ...partsOf(day), day, weekday: weekdayOf(day), time: at + before - day * MS_PER_DAY };
}

/** Which week of its month a change comes in: the last, as one counts back, and the number, as one counts on. */
function weeksOf(change: ClockChange): readonly number[] {
  const { day, month, date } = onsetOf(change);
  const isLast = partsOf(plus(day, 7)).month !== month;
  return [...(isLast ? [-1] : []), Math.ceil(date / 7)];
}

/** `FREQ=YEARLY;BYMONTH=3;BYDAY=2SU`, ended where the last years have it no more; null for what comes once. */
function everyYear({ changes, weeks }: Series, lastYear: number): string | null {
  const last = changes.at(-1);
  if (!last || changes.length < 2) return null;
  const { month, weekday, year } = onsetOf(last);
  const end = year < lastYear ? `;UNTIL=${stampOf(last.at)}Z` : "";
  return `FREQ=YEARLY;BYMONTH=${month};BYDAY=${weeks[0]}${WEEKDAYS[weekday - 1]}${end}`;
}

/** The longest that a clock stays forward before it goes back [days]. Source: Morocco, whose clock goes back for Ramadan alone. */
const LONGEST_FORWARD_DAYS = 340;

/** Whether a change puts the clock forward for a part of the year, and not for good. */
function isDaylight(change: ClockChange, changes: readonly ClockChange[]): boolean {
  if (change.after <= change.before) return false;
  const back = changes.find(({ at, after }) => at > change.at && after < change.after);
  return back !== undefined && back.at - change.at < LONGEST_FORWARD_DAYS * MS_PER_DAY;
}

function linesOf({ at, before, after, daylight, every }: Rule): readonly string[] {
  const name = daylight ? "DAYLIGHT" : "STANDARD";
  return [
    `BEGIN:${name}`,
    `DTSTART:${stampOf(at + before)}`,
    `TZOFFSETFROM:${offsetText(before)}`,
    `TZOFFSETTO:${offsetText(after)}`,
    ...(every === null ? [] : [`RRULE:${every}`]),
    `END:${name}`,
  ];
}

/** `-0600`. */
function offsetText(offset: number): string {
  const minutes = Math.abs(offset) / MS_PER_MINUTE;
  const two = (n: number) => String(n).padStart(2, "0");
  return `${offset < 0 ? "-" : "+"}${two(Math.floor(minutes / 60))}${two(minutes % 60)}`;
}
