import { firstRow, type SqlStore } from "./sql.ts";

/** The last build of the year: what it was made from, and what became of the tries since. */
export type BuildRecord = {
  /** Counts builds; 0: there was none. */
  readonly number: number;
  readonly revision: number;
  readonly code: string;
  /** The instant [ms since 1970 UTC] at which the garden's day turns. */
  readonly until: number;
  /** Number of the last line of the diary that it knows. */
  readonly line: number;
  /** The readings of plans that the baseline was calculated from; null: none is kept. */
  readonly baselineOf: string | null;
  /** Tries in a row that failed, and the instant [ms] before which no request starts another. */
  readonly failures: number;
  readonly retryAt: number;
};

const NEVER_BUILT: BuildRecord = {
  ...{ number: 0, revision: 0, code: "", until: 0, line: 0, baselineOf: null },
  ...{ failures: 0, retryAt: 0 },
};

/** The record of the last build. */
export function buildRecord(sql: SqlStore): BuildRecord {
  const row = firstRow<BuildRecord>(
    sql,
    `SELECT number, revision, code, until, line, baseline_of AS baselineOf, failures, retry_at AS retryAt FROM build`,
  );
  return row ?? NEVER_BUILT;
}

/** Makes the year one that is owed anew, since what is stored of it can't be read. */
export function discardBuild(sql: SqlStore): void {
  sql.rows("UPDATE build SET code = ''");
}

/** Stores the record of a build, or of a try that failed. */
export function storeBuildRecord(sql: SqlStore, record: BuildRecord): void {
  const { number, revision, code, until, line, baselineOf, failures, retryAt } = record;
  sql.rows(
    `INSERT OR REPLACE INTO build (only, number, revision, code, until, line, baseline_of, failures, retry_at)
      VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)`,
    ...[number, revision, code, until, line, baselineOf, failures, retryAt],
  );
}
