import type { Day } from "../../base/index.ts";
import { seal, unseal } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/** What became of one task with a build: the day it stands on, or stood on last, and in words. */
export type MovedTask = { readonly id: string; readonly day: Day; readonly text: string };

/** Stores what moved with the build that first knew some lines of the diary, in place of what any earlier line moved. */
export function storeMoved(
  sql: SqlStore,
  lines: readonly number[],
  changes: readonly MovedTask[],
): void {
  sql.rows("DELETE FROM moved WHERE line < (SELECT max(id) - 200 FROM diary)");
  for (const line of lines)
    sql.rows(
      "INSERT OR REPLACE INTO moved (line, changes) VALUES (?1, ?2)",
      ...[line, seal(changes)],
    );
}

/** What moved with a line of the diary; null where no build has known it yet. */
export function movedBy(sql: SqlStore, line: number): readonly MovedTask[] | null {
  const row = firstRow<{ readonly changes: string }>(
    sql,
    "SELECT changes FROM moved WHERE line = ?1",
    line,
  );
  return unseal(row?.changes ?? null);
}
