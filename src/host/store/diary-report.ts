import type { Day } from "../../base/index.ts";
import { parseStoredJson } from "./bytes.ts";
import { loadText, storeText } from "./pieces.ts";
import type { SqlStore } from "./sql.ts";

/**
 * A line of the diary as its page shows it: its number in the store (null: it stands in a plan), its day, what was said (empty
 * for an answer), and what was understood, a line each.
 */
export type ReportedLine = {
  readonly line: number | null;
  readonly day: Day;
  readonly text: string;
  readonly understood: readonly string[];
};

const NAME = "diary-report";

/** Stores the diary as the last build understood it, the newest day first. */
export function storeDiaryReport(sql: SqlStore, lines: readonly ReportedLine[]): void {
  const text = JSON.stringify(lines);
  if (loadText(sql, NAME) !== text) storeText(sql, NAME, text);
}

/** The diary as the last build understood it, the newest day first; empty where there was none. */
export function diaryReport(sql: SqlStore): readonly ReportedLine[] {
  const text = loadText(sql, NAME);
  return parseStoredJson(text) ?? [];
}
