import type { Event } from "../../app/records.ts";
import { discardBuild } from "./build.ts";
import { damagedLines } from "./diary.ts";
import { mendFeeds } from "./feeds.ts";
import { mendRevoked } from "./links.ts";
import { loadText } from "./pieces.ts";
import { damagedVersions, mendInForce, mendPlaces } from "./plans.ts";
import { gardenRecord, mendRecord } from "./record.ts";
import { unseal } from "./sealed.ts";
import type { SqlStore } from "./sql.ts";

/** Something that was found to be damaged, in a sentence for the owner, and when [ms since 1970 UTC]. */
export type DamageNote = { readonly what: string; readonly foundAt: number };

/** How long the owner is told of it [ms]. Source: house rule: two weeks, as long as a holiday. */
const TOLD_MS = 14 * 86_400_000;

/** What the owner is still told at an instant [ms], the newest first. */
export function damageNotes(sql: SqlStore, now: number): readonly DamageNote[] {
  return sql.rows(
    "SELECT what, found_at AS foundAt FROM damage WHERE found_at > ?1 ORDER BY found_at DESC, what LIMIT 20",
    now - TOLD_MS,
  );
}

/**
 * Looks through all that is stored for what is not what was written, by its check sums. What is calculated is taken away and owed anew;
 * what is stored twice is put right; of what somebody wrote the owner is told, and it counts for nothing. Gives whether any was found.
 */
export function mendDamage(sql: SqlStore, now: number): boolean {
  return sql.transaction(() => {
    if (gardenRecord(sql) === null) return false;
    const calculated = MENDERS.reduce((sum, mend) => sum + mend(sql), 0);
    const written = writtenDamage(sql);
    const notes = calculated === 0 ? written : [...written, CALCULATED];
    const fresh = notes.filter((what) => note(sql, what, now));
    if (calculated > 0) discardBuild(sql);
    return calculated > 0 || fresh.length > 0;
  });
}

const CALCULATED =
  "Something that is calculated from your plans and your diary was damaged where it is stored. It was calculated anew.";

/** Damage to what somebody wrote, a sentence each. */
function writtenDamage(sql: SqlStore): readonly string[] {
  const plans = damagedVersions(sql).map(
    ({ year, version }) =>
      `The text of the plan for ${year}, version ${version}, was damaged where it is stored. The garden goes on as it was last read. Look at the plan, and use an earlier version if words are missing.`,
  );
  const lines = damagedLines(sql).map(
    ({ id, day, text }) =>
      `Line ${id} of the diary was damaged where it is stored, and no longer counts: ${day.slice(0, 10)}, ${text.slice(0, 300)}. Write it down again if it is missed.`,
  );
  return [...plans, ...lines];
}

/** Whether that was not noted before. */
function note(sql: SqlStore, what: string, now: number): boolean {
  if (sql.rows("SELECT 1 FROM damage WHERE what = ?1", what).length > 0) {
    if (what === CALCULATED) sql.rows("UPDATE damage SET found_at = ?2 WHERE what = ?1", what, now);
    return false;
  }
  sql.rows("INSERT INTO damage (what, found_at) VALUES (?1, ?2)", what, now);
  return true;
}

/** Each puts one kind of value right, or takes it away, and gives how many were damaged. */
const MENDERS: readonly ((sql: SqlStore) => number)[] = [
  mendRecord,
  mendPlaces,
  mendInForce,
  mendRevoked,
  mendTasks,
  mendEvents,
  (sql) => dropUnreadable(sql, { table: "former", key: "event", value: "tasks" }),
  (sql) => dropUnreadable(sql, { table: "moved", key: "line", value: "changes" }),
  mendFeeds,
  mendPieces,
  mendBuild,
];

function mendTasks(sql: SqlStore): number {
  type Row = {
    readonly id: string;
    readonly card: string | null;
    readonly published: string | null;
  };
  const isBad = (value: string | null) => value !== null && unseal(value) === null;
  const bad = sql
    .rows<Row>("SELECT id, card, published FROM tasks")
    .filter(({ card, published }) => isBad(card) || isBad(published));
  for (const { id, card, published } of bad)
    sql.rows(
      "UPDATE tasks SET card = ?2, published = ?3 WHERE id = ?1",
      ...[id, isBad(card) ? null : card, isBad(published) ? null : published],
    );
  return bad.length;
}

/** They stay till the next build puts others in their place: a feed without them would be wrong, and none is written. */
function mendEvents(sql: SqlStore): number {
  type Row = {
    readonly key: string;
    readonly inSet: string;
    readonly day: number;
    readonly json: string;
  };
  const bad = sql
    .rows<Row>("SELECT key, in_set AS inSet, day, json FROM events")
    .filter(({ key, inSet, day, json }) => {
      const event = unseal<Event>(json);
      return event?.key !== key || event.set !== inSet || event.day !== day;
    });
  return bad.length;
}

type Sealed = { readonly table: string; readonly key: string; readonly value: string };

function dropUnreadable(sql: SqlStore, { table, key, value }: Sealed): number {
  type Row = { readonly key: string | number; readonly value: string };
  const bad = sql
    .rows<Row>(`SELECT ${key} AS key, ${value} AS value FROM ${table}`)
    .filter((row) => unseal(row.value) === null);
  for (const row of bad) sql.rows(`DELETE FROM ${table} WHERE ${key} = ?1`, row.key);
  return bad.length;
}

/** Texts in pieces, which gzip's own check sum vouches for. */
function mendPieces(sql: SqlStore): number {
  type Row = { readonly name: string };
  const bad = sql
    .rows<Row>("SELECT DISTINCT name FROM pieces WHERE name NOT GLOB 'body/*'")
    .filter(({ name }) => loadText(sql, name) === null);
  for (const { name } of bad) {
    sql.rows("DELETE FROM pieces WHERE name = ?1", name);
    sql.rows("DELETE FROM fingerprints WHERE name = ?1", name);
    if (name === "weather") sql.rows("UPDATE weather SET next_at = 0");
  }
  return bad.length;
}

/** The build's place in the diary, which can't lie behind its end. */
function mendBuild(sql: SqlStore): number {
  const end = "(SELECT coalesce(max(id), 0) FROM diary)";
  const bad = sql.rows(`SELECT 1 FROM build WHERE line > ${end} OR line < 0`).length;
  if (bad > 0) sql.rows(`UPDATE build SET line = ${end}`);
  return bad;
}
