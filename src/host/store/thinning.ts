import type { SqlStore } from "./sql.ts";

/** A version of a year's plan by number, when it was saved [ms since 1970 UTC] and its bytes. */
export type VersionSize = {
  readonly version: number;
  readonly savedAt: number;
  readonly bytes: number;
};

/**
 * What is kept of a year's versions: the newest, each; of those before, one a day for so many days; then one every thirty days.
 * And bytes in all, though never fewer than a few of the newest. Source: house rule; who undoes more than thirty saves looks for
 * a day, and for a month later on.
 */
const KEPT = { newest: 30, few: 5, days: 60, bytes: 10 * 1024 * 1024 } as const;

const DAY_MS = 86_400_000;
const MONTH_MS = 30 * DAY_MS;

/** The versions to be let go of, given newest first; the age of each counts from the newest. */
export function thinnedVersions(versions: readonly VersionSize[]): readonly number[] {
  const newest = versions[0]?.savedAt ?? 0;
  const spans = new Set<string>();
  let bytes = 0;
  return versions.flatMap(({ version, savedAt, bytes: own }, at) => {
    bytes += own;
    if (at < KEPT.few) return [];
    const isRecent = newest - savedAt < KEPT.days * DAY_MS;
    const span = isRecent
      ? `day ${Math.floor(savedAt / DAY_MS)}`
      : `month ${Math.floor(savedAt / MONTH_MS)}`;
    const isKept = (at < KEPT.newest || !spans.has(span)) && bytes <= KEPT.bytes;
    spans.add(span);
    if (!isKept) bytes -= own;
    return isKept ? [] : [version];
  });
}

/** Lets go of the versions of a year's plan that are too many, by their age. */
export function thinVersions(sql: SqlStore, year: number): void {
  const versions = sql.rows<VersionSize>(
    `SELECT version, saved_at AS savedAt, length(CAST(text AS BLOB)) + length(CAST(beside AS BLOB)) AS bytes
      FROM plans WHERE year = ?1 ORDER BY version DESC`,
    year,
  );
  const gone = thinnedVersions(versions);
  if (gone.length === 0) return;
  sql.rows(
    "DELETE FROM plans WHERE year = ?1 AND version IN (SELECT value FROM json_each(?2))",
    ...[year, JSON.stringify(gone)],
  );
}
