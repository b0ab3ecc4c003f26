import { getTimezoneOffset } from "date-fns-tz";
import type { Day } from "./day.ts";

const MS_PER_DAY = 86_400_000;
const MS_PER_MINUTE = 60_000;

/** Minutes since midnight on the garden's own clock, 0 to 1440. */
export type Minute = number;

/** Whether the IANA time zone database has a zone of that name, with that spelling. */
export function isZone(zone: string): boolean {
  if (!/^[A-Za-z_]+(\/[A-Za-z0-9_+-]+)*$/.test(zone)) return false;
  try {
    return new Intl.DateTimeFormat("en", { timeZone: zone }).format(0) !== "";
  } catch {
    return false;
  }
}

/** Every IANA zone name this runtime knows, sorted. */
export function zoneNames(): readonly string[] {
  return Intl.supportedValuesOf("timeZone");
}

const steady = new Map<string, Map<number, number>>();

/** The zone's offset from UTC [ms] on a day without a clock change within a day of it, else null. A memo, nothing more. */
function steadyOffset(day: Day, zone: string): number | null {
  const known = steady.get(zone) ?? new Map<number, number>();
  steady.set(zone, known);
  const had = known.get(day);
  if (had !== undefined) return Number.isNaN(had) ? null : had;
  const before = offsetAt((day - 1) * MS_PER_DAY, zone);
  const after = offsetAt((day + 2) * MS_PER_DAY, zone);
  const middle = offsetAt(day * MS_PER_DAY, zone);
  const same = before === after && before === middle;
  known.set(day, same ? before : Number.NaN);
  return same ? before : null;
}

function offsetAt(instant: number, zone: string): number {
  const offset = getTimezoneOffset(zone, new Date(instant));
  if (Number.isNaN(offset)) throw new RangeError(`not a time zone: ${zone}`);
  return offset;
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
  const before = offsetAt(local - MS_PER_DAY, zone);
  const after = offsetAt(local + MS_PER_DAY, zone);
  if (offsetAt(local - before, zone) === before) return local - before;
  if (offsetAt(local - after, zone) === after) return local - after;
  return local - before;
}

/** The day the garden's clock shows at an instant [ms since 1970 UTC]. */
export function dayAt(instant: number, zone: string): Day {
  return Math.floor((instant + offsetAt(instant, zone)) / MS_PER_DAY) as Day;
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

/** `2027-05-08T00:00:00Z` and so on for an instant [ms since 1970 UTC]; whole seconds, the rest is cut. */
export function isoUtc(instant: number): string {
  return `${new Date(instant).toISOString().slice(0, 19)}Z`;
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
