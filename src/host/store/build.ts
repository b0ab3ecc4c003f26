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

const DAY_MS = 86_400_000;

/**
 * How far ahead what a build leaves may lie [ms]: the day turns within the month, and no pause is as long as a day. What lies
 * further ahead was left by a clock that ran ahead, and no longer holds once that is set right.
 */
const FURTHEST = { until: 40 * DAY_MS, retryAt: DAY_MS } as const;

/**
 * SQL over `garden` and `build` (which may have no row): whether a build is owed by a code ?1 at an instant ?2, since plans,
 * diary, code or day are others than the last build's, or a feed shows an earlier one; and when it may begin.
 */
export const OWED_COLUMNS = `(build.number IS NULL OR build.revision <> garden.revision OR build.code <> ?1
  OR build.until NOT BETWEEN ?2 + 1 AND ?2 + ${FURTHEST.until} OR EXISTS (SELECT 1 FROM feeds WHERE feeds.build <> build.number)) AS owed,
  CASE WHEN build.retry_at <= ?2 + ${FURTHEST.retryAt} THEN build.retry_at ELSE 0 END AS retryAt`;

/** Whether a build's day has turned at an instant [ms], or was that of a clock that ran ahead. */
export function isDayOver({ until }: Pick<BuildRecord, "until">, now: number): boolean {
  return until <= now || until > now + FURTHEST.until;
}

/** Whether a build is owed, 0 or 1, and the instant [ms since 1970 UTC] before which it may not begin. */
export type OwedBuild = { readonly owed: number; readonly retryAt: number };

/** The build that is owed by a code at an instant [ms since 1970 UTC]; null where there is no garden. */
export function owedBuild(sql: SqlStore, code: string, now: number): OwedBuild | null {
  return firstRow<OwedBuild>(sql, `SELECT ${OWED_COLUMNS} FROM garden LEFT JOIN build`, code, now);
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
