import { firstRow, type SqlStore } from "./sql.ts";

/** Whether the garden was deleted for good. */
export function isGone(sql: SqlStore): boolean {
  return firstRow(sql, "SELECT 1 FROM gone") !== null;
}

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
