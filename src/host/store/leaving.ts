import { firstRow, type SqlStore } from "./sql.ts";

/** Whether the garden was deleted for good. */
export function isGone(sql: SqlStore): boolean {
  return firstRow(sql, "SELECT 1 FROM gone") !== null;
}

/**
 * Empties the garden so that it can be made anew from an archive, inside a transaction: what stays is its record, its links, and what
 * calendars were told, so that what they are told next counts as newer.
 */
export function clearForRestoring(sql: SqlStore): void {
  sql.rows("INSERT INTO gone (at) VALUES (0)");
  for (const table of REMADE) sql.rows(`DELETE FROM ${table}`);
  sql.rows("DELETE FROM pieces WHERE name NOT GLOB 'body/*'");
  sql.rows("DELETE FROM gone");
  sql.rows("UPDATE feeds SET build = 0");
}

/** Tables that an archive, or the next build, fills again. */
const REMADE = [
  ...["plans", "in_force", "diary", "taken_back", "fingerprints", "build", "tasks", "events"],
  ...["former", "moved", "weather"],
];

/** Tables of which nothing stays. */
const EMPTIED = [
  ...[
    "plans",
    "in_force",
    "people",
    "diary",
    "revoked",
    "pieces",
    "fingerprints",
    "build",
    "tasks",
    "events",
    "former",
    "weather",
    "copies",
    "next_owners",
    "recovery",
    "damage",
  ],
  ...["moved", "taken_back", "feeds", "ledger", "writes", "garden"],
];

/**
 * Deletes the garden for good: plans with all their versions, diary, feeds and the year, at once or not at all. Only the mark
 * that it is gone stays, so that no link of it ever opens a garden again. `at` in ms since 1970 UTC.
 */
export function deleteGarden(sql: SqlStore, at: number): void {
  sql.transaction(() => {
    if (!isGone(sql)) sql.rows("INSERT INTO gone (at) VALUES (?1)", at);
    for (const table of EMPTIED) sql.rows(`DELETE FROM ${table}`);
  });
}
