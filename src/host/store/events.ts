import type { Event, FormerTasks } from "../../app/records.ts";
import type { Day } from "../../base/index.ts";
import { readable, seal, unseal } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

type EventRow = { readonly json: string };

const eventsFrom = (rows: readonly EventRow[]): readonly Event[] =>
  rows.map(({ json }) => readable<Event>(json));

/** Days, the last one excluded, and the set of events that is asked for; those that are in both sets belong to each. */
export type EventRange = {
  readonly from: Day;
  readonly before: Day;
  readonly set: Exclude<Event["set"], "both">;
};

/** The events of one set and some days, in day order. */
export function eventsBetween(sql: SqlStore, { from, before, set }: EventRange): readonly Event[] {
  const query = `SELECT json FROM events WHERE day >= ?1 AND day < ?2 AND in_set IN (?3, 'both')
    ORDER BY day, key`;
  return eventsFrom(sql.rows<EventRow>(query, from, before, set));
}

/** The first so many events of one set from a day on, in day order. */
export function nextEvents(
  sql: SqlStore,
  { from, set }: Pick<EventRange, "from" | "set">,
  count: number,
): readonly Event[] {
  const query = `SELECT json FROM events WHERE day >= ?1 AND in_set IN (?2, 'both')
    ORDER BY day, key LIMIT ?3`;
  return eventsFrom(sql.rows<EventRow>(query, from, set, count));
}

/** Every event of the year, in day order. Throws where one can't be read, since a feed without it would be wrong. */
export function allEvents(sql: SqlStore): readonly Event[] {
  return eventsFrom(sql.rows<EventRow>(ALL));
}

const ALL = "SELECT json FROM events ORDER BY day, key";

/** Events in the order in which `allEvents` gives them once they are stored. */
export function inDayOrder(events: readonly Event[]): readonly Event[] {
  return [...events].sort(
    (a, b) => a.day - b.day || compare(a.key, b.key) || compare(a.set, b.set),
  );
}

const compare = (a: string, b: string) => (a < b ? -1 : Number(a > b));

/** The events that are stored, unparsed, in day order: a build reads them once. */
export type StoredEvents = readonly {
  readonly key: string;
  readonly inSet: string;
  readonly day: number;
  readonly json: string;
}[];

/** Every stored event, readable or not. */
export function storedEvents(sql: SqlStore): StoredEvents {
  return sql.rows("SELECT key, in_set AS inSet, day, json FROM events ORDER BY day, key");
}

/** Those of them that can be read. */
export function readableEvents(events: StoredEvents): readonly Event[] {
  return events.flatMap(({ json }) => unseal<Event>(json) ?? []);
}

/** The event of that key, or else the one that a task of that id stands in; null where there is neither. */
export function eventOf(sql: SqlStore, key: string): Event | null {
  const query = `SELECT json FROM events WHERE key = ?1 OR key = (SELECT event FROM tasks WHERE id = ?1)
    ORDER BY key <> ?1, in_set LIMIT 1`;
  return eventsFrom(sql.rows<EventRow>(query, key))[0] ?? null;
}

/** Stores the year's events in place of those that stood, only those that differ. Every one of a key and set is another. */
export function storeEvents(
  sql: SqlStore,
  events: readonly Event[],
  stood: StoredEvents = storedEvents(sql),
): void {
  const had = new Map(stood.map((row) => [`${row.inSet} ${row.key}`, row]));
  for (const event of events) {
    const name = `${event.set} ${event.key}`;
    const json = seal(event);
    const row = had.get(name);
    const same = row?.json === json && row.day === event.day;
    had.delete(name);
    if (!same)
      sql.rows(
        "INSERT OR REPLACE INTO events (key, in_set, day, json) VALUES (?1, ?2, ?3, ?4)",
        ...[event.key, event.set, event.day, json],
      );
  }
  for (const { key, inSet } of had.values())
    sql.rows("DELETE FROM events WHERE key = ?1 AND in_set = ?2", key, inSet);
}

type FormerRow = { readonly event: string; readonly tasks: string; readonly at: number };

/** What events were told with before they changed. */
export function formerTasks(sql: SqlStore): FormerTasks {
  const rows = sql.rows<FormerRow>("SELECT event, tasks, at FROM former ORDER BY event");
  const kept = rows.flatMap(({ event, tasks, at }) => {
    const had = unseal<readonly string[]>(tasks);
    return had === null ? [] : [[event, { tasks: had, at }] as const];
  });
  return Object.fromEntries(kept);
}

/** Ids of tasks that an event had before it changed. */
export function formerTasksOf(sql: SqlStore, event: string): readonly string[] {
  const row = firstRow<FormerRow>(sql, "SELECT tasks FROM former WHERE event = ?1", event);
  return unseal<readonly string[]>(row?.tasks ?? null) ?? [];
}

/** Stores what events were told with before, in place of what stood. */
export function storeFormerTasks(
  sql: SqlStore,
  former: FormerTasks,
  had: FormerTasks = formerTasks(sql),
): void {
  for (const [event, { tasks, at }] of Object.entries(former))
    if (had[event]?.at !== at)
      sql.rows(
        "INSERT OR REPLACE INTO former (event, tasks, at) VALUES (?1, ?2, ?3)",
        ...[event, seal(tasks), at],
      );
  for (const event of Object.keys(had))
    if (!Object.hasOwn(former, event)) sql.rows("DELETE FROM former WHERE event = ?1", event);
}
