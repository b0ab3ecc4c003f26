import { instantOf, MS_PER_DAY, wallTimeAt } from "../../base/index.ts";
import type { Event } from "../events/event.ts";

/** The most reminders that one feed rings on a day; whoever hears more hears none. Source: house rule. */
const MOST_A_DAY = 3;

const MS_PER_MINUTE = 60_000;

/** The instant [ms since 1970 UTC] at which an event's reminder rings by the garden's clock; null where it has none. */
export function ringsAt({ when, remindMinutesBefore }: Event, clock: string): number | null {
  if (remindMinutesBefore === null) return null;
  const start = when.kind === "all day" ? instantOf(when.day, 0, clock) : when.from;
  return start - remindMinutesBefore * MS_PER_MINUTE;
}

/**
 * The events of one feed that ring: of those that would on one day the three that would cost most to overlook, then those
 * with an hour, then by their keys.
 */
export function ringingEvents(events: readonly Event[], clock: string): ReadonlySet<Event> {
  const byDay = new Map<number, Event[]>();
  for (const event of events) {
    const at = ringsAt(event, clock);
    if (at === null) continue;
    const day = Math.floor(wallTimeAt(at, clock) / MS_PER_DAY);
    const others = byDay.get(day);
    if (others) others.push(event);
    else byDay.set(day, [event]);
  }
  return new Set(
    [...byDay.values()].flatMap((all) => all.sort(costliestFirst).slice(0, MOST_A_DAY)),
  );
}

function costliestFirst(a: Event, b: Event): number {
  const timed = ({ when }: Event) => (when.kind === "timed" ? 1 : 0);
  return b.weight - a.weight || timed(b) - timed(a) || (a.key < b.key ? -1 : 1);
}
