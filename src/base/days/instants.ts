import { fromZonedTime } from "date-fns-tz";
import { type Day, MS_PER_DAY } from "./day.ts";

const MS_PER_MINUTE = 60_000;
const MS_PER_SECOND = 1000;

/** Minutes since midnight on the garden's own clock, 0 to 1440. */
export type Minute = number;

/** Whether the IANA time zone database has a zone of that name, with that spelling. */
export function isZone(zone: string): boolean {
  if (!/^[A-Za-z_]+(\/[A-Za-z0-9_+-]+)*$/.test(zone)) return false;
  try {
    clockOf(zone);
    return true;
  } catch {
    return false;
  }
}

/** Every IANA zone name this runtime knows, sorted. */
export function zoneNames(): readonly string[] {
  return Intl.supportedValuesOf("timeZone");
}

/** Zones that are cached: more than one garden has, and few enough to stay small however a name is written. */
const MOST_CACHED_ZONES = 100;

const clocks = new Map<string, Intl.DateTimeFormat>();

/** The format that shows a zone's clock, cached by zone. Throws for a zone that does not exist. */
function clockOf(zone: string): Intl.DateTimeFormat {
  const known = clocks.get(zone);
  if (known) return known;
  const fields = {
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    second: "2-digit",
  } as const;
  const clock = new Intl.DateTimeFormat("en-US", {
    ...fields,
    timeZone: zone,
    hourCycle: "h23",
    era: "short",
  });
  if (clocks.size >= MOST_CACHED_ZONES) clocks.clear();
  clocks.set(zone, clock);
  return clock;
}

/**
 * The zone's offset from UTC [ms] at an instant, from the clock itself, because date-fns-tz reads an instant as wall
 * time and is wrong near a clock change.
 */
function offsetAt(instant: number, zone: string): number {
  const at = Math.floor(instant / MS_PER_SECOND) * MS_PER_SECOND;
  const part: Record<string, number> = {};
  for (const { type, value } of clockOf(zone).formatToParts(at)) part[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
  return Date.UTC(year, month - 1, day, hour, minute, second) - at;
}

/**
 * What the zone's clock shows at an instant [ms since 1970 UTC], as the instant at which a clock in UTC shows the same. Days
 * without a clock change near them are cached.
 */
export function wallTimeAt(instant: number, zone: string): number {
  const day = Math.floor(instant / MS_PER_DAY) as Day;
  return instant + (steadyOffset(day, zone) ?? offsetAt(instant, zone));
}

/**
 * Whether a zone's clock shows this time for the first time: a local time means the first of two hours that look alike.
 * Source: RFC 5545, section 3.3.5.
 */
export function isFirstShowing(instant: number, zone: string): boolean {
  const day = Math.floor(instant / MS_PER_DAY) as Day;
  if (steadyOffset(day, zone) !== null) return true;
  const first = instantOf(dayAt(instant, zone), minuteAt(instant, zone), zone);
  return first === Math.floor(instant / MS_PER_MINUTE) * MS_PER_MINUTE;
}

/** A change of a zone's clock: its instant [ms since 1970 UTC], and the offsets from UTC [ms] before and after it. */
export type ClockChange = { readonly at: number; readonly before: number; readonly after: number };

const WEEK_MS = 7 * MS_PER_DAY;

/**
 * The changes of a zone's clock between two instants [ms since 1970 UTC], the first excluded, in order. Two changes within a
 * week that undo each other are not seen; no zone has had such since 1970.
 */
export function clockChanges(from: number, to: number, zone: string): readonly ClockChange[] {
  const changes: ClockChange[] = [];
  let before = offsetAt(from, zone);
  for (let at = from; at < to; at += WEEK_MS) {
    const end = Math.min(at + WEEK_MS, to);
    const after = offsetAt(end, zone);
    if (after !== before) changes.push({ at: changeIn(at, end, zone), before, after });
    before = after;
  }
  return changes;
}

/** The first instant of the later offset, to the minute, where one begins between two instants. */
function changeIn(from: number, to: number, zone: string): number {
  const before = offsetAt(from, zone);
  let [low, high] = [from / MS_PER_MINUTE, to / MS_PER_MINUTE];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (offsetAt(middle * MS_PER_MINUTE, zone) === before) low = middle;
    else high = middle;
  }
  return high * MS_PER_MINUTE;
}

const steadyOffsets = new Map<string, Map<Day, number | null>>();

/** Days of a zone whose offsets are cached: more than the years of one garden, and few enough to stay small. */
const MOST_CACHED_DAYS = 10_000;

/** The zone's offset from UTC [ms] on a day without a clock change within a day of it, else null. Cached by zone and day. */
function steadyOffset(day: Day, zone: string): number | null {
  const known = steadyOffsets.get(zone);
  const cached = known?.get(day);
  if (cached !== undefined) return cached;
  const offset = calculateSteadyOffset(day, zone);
  const roomLeft = known !== undefined && known.size < MOST_CACHED_DAYS;
  if (known === undefined && steadyOffsets.size >= MOST_CACHED_ZONES) steadyOffsets.clear();
  steadyOffsets.set(zone, (roomLeft ? known : new Map<Day, number | null>()).set(day, offset));
  return offset;
}

function calculateSteadyOffset(day: Day, zone: string): number | null {
  const [before, middle, after] = [-1, 0.5, 2].map((days) =>
    offsetAt((day + days) * MS_PER_DAY, zone),
  );
  return before !== undefined && before === middle && before === after ? before : null;
}

/**
 * The instant [ms since 1970 UTC] at which the garden's clock shows that minute of that day.
 * An hour that a clock change skips is read with the offset before the change, and one it repeats
 * is its first occurrence. Throws for a zone that does not exist.
 * Source: RFC 5545, section 3.3.5.
 */
export function instantOf(day: Day, minute: Minute, zone: string): number {
  const local = day * MS_PER_DAY + minute * MS_PER_MINUTE;
  const fixed = steadyOffset(day, zone);
  if (fixed !== null) return local - fixed;
  const shows = (instant: number) => instant + offsetAt(instant, zone) === local;
  const before = local - offsetAt(local - MS_PER_DAY, zone);
  if (shows(before)) return before;
  const found = fromZonedTime(new Date(local).toISOString().slice(0, 19), zone).getTime();
  return shows(found) ? found : before;
}

/** The day the garden's clock shows at an instant [ms since 1970 UTC]. */
export function dayAt(instant: number, zone: string): Day {
  return Math.floor((instant + offsetAt(instant, zone)) / MS_PER_DAY) as Day;
}

/** The whole minute since midnight [min] that the garden's clock shows at an instant [ms since 1970 UTC]. */
export function minuteAt(instant: number, zone: string): Minute {
  const sinceMidnight = instant + offsetAt(instant, zone) - dayAt(instant, zone) * MS_PER_DAY;
  return Math.floor(sinceMidnight / MS_PER_MINUTE);
}

/** Local time with its offset, `2027-05-08T10:00:00-06:00`, for a minute of a day in a zone. */
export function isoWithOffset(day: Day, minute: Minute, zone: string): string {
  const instant = instantOf(day, minute, zone);
  const offset = offsetAt(instant, zone) / MS_PER_MINUTE;
  const local = new Date(instant + offset * MS_PER_MINUTE).toISOString().slice(0, 19);
  const two = (n: number) => String(n).padStart(2, "0");
  const size = Math.abs(offset);
  return `${local}${offset < 0 ? "-" : "+"}${two(Math.trunc(size / 60))}:${two(size % 60)}`;
}

/** `18:30`: a minute of the day on a 24-hour clock. */
export function sayMinute(minute: Minute): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;
}

/** The instant [ms since 1970 UTC] at which a day begins in a zone. */
export function startOf(day: Day, zone: string): number {
  return instantOf(day, 0, zone);
}
