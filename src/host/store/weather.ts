import type { KnownWeather } from "../../app/index.ts";
import { parseStoredJson } from "./bytes.ts";
import { loadText, storeText } from "./pieces.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * What a garden knows of when it asked for its weather: of which cell, when the answer came that it has (null: none), when it
 * asks again [ms since 1970 UTC], and what was wrong with the last try (null: nothing).
 */
export type WeatherRecord = {
  readonly cell: string;
  readonly fetchedAt: number | null;
  readonly nextAt: number;
  readonly fault: string | null;
};

const NAME = "weather";

/** The record of the last time; null where the garden never asked. */
export function weatherRecord(sql: SqlStore): WeatherRecord | null {
  return firstRow<WeatherRecord>(
    sql,
    "SELECT cell, fetched_at AS fetchedAt, next_at AS nextAt, fault FROM weather",
  );
}

/** What is known of the weather of a cell; null where nothing is, or it can't be read. */
export function loadWeather(sql: SqlStore, cell: string | null): KnownWeather | null {
  if (cell === null || weatherRecord(sql)?.cell !== cell) return null;
  return parseStoredJson<KnownWeather>(loadText(sql, NAME) ?? "");
}

/**
 * Stores when the garden asks again, and what is known now; null: still what was known of that cell. The year is built anew where
 * that is other than before: the table's triggers raise the garden's revision. `now` [ms since 1970 UTC] is then the newest
 * reason for a change.
 */
export function storeWeather(
  sql: SqlStore,
  { cell, fetchedAt, nextAt, fault }: WeatherRecord,
  { weather, now }: { readonly weather: KnownWeather | null; readonly now: number },
): void {
  type Row = { readonly changes: number; readonly cell: string };
  const before = firstRow<Row>(sql, "SELECT changes, cell FROM weather");
  const isOfOther = before !== null && before.cell !== cell;
  const text = weather === null && !isOfOther ? null : JSON.stringify(weather);
  const same = text === null || text === loadText(sql, NAME);
  if (!same) storeText(sql, NAME, text);
  const changes = (before?.changes ?? 0) + (same ? 0 : 1);
  sql.rows(
    `INSERT INTO weather (only, cell, fetched_at, next_at, fault, changes, changed_at) VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6)
      ON CONFLICT (only) DO UPDATE SET cell = ?1, fetched_at = ?2, next_at = ?3, fault = ?4, changes = ?5, changed_at = ?6`,
    ...[cell, fetchedAt, nextAt, fault, changes, now],
  );
}
