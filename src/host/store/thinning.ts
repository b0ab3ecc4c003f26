import { firstRow, type SqlStore } from "./sql.ts";

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

/**
 * Bytes of all versions of all years of a garden, with the texts beside them. Source: house rule; ten years of a large plan with
 * all their kept versions come to a tenth of it, and an archive of so much can still be read in the platform's memory.
 */
export const MOST_GARDEN_BYTES = 24 * 1024 * 1024;

/**
 * Bytes of an archive as it is sent, and of what is unpacked of it; files in it. Source: house rule: what a garden may store always
 * fits, and unpacking stays far below the platform's memory.
 */
export const MOST_ARCHIVE = {
  packed: 16 * 1024 * 1024,
  unpacked: 44 * 1024 * 1024,
  files: 30_000,
} as const;

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

const BYTES = "length(CAST(text AS BLOB)) + length(CAST(beside AS BLOB))";

/** Lets go of the versions of a year's plan that are too many, by their age; then of any year's, where the garden is too large. */
export function thinVersions(sql: SqlStore, year: number): void {
  const versions = sql.rows<VersionSize>(
    `SELECT version, saved_at AS savedAt, ${BYTES} AS bytes FROM plans WHERE year = ?1 ORDER BY version DESC`,
    year,
  );
  letGo(sql, year, thinnedVersions(versions));
  thinGarden(sql);
}

/** Bytes of the versions in force of all years but one, with the texts beside them. */
export function bytesInForce(sql: SqlStore, but: number): number {
  type Row = { readonly bytes: number };
  const query = `SELECT coalesce(sum(${BYTES}), 0) AS bytes FROM plans JOIN in_force USING (year, version) WHERE year <> ?1`;
  return firstRow<Row>(sql, query, but)?.bytes ?? 0;
}

/** The oldest versions that are not in force go first, of whichever year. */
function thinGarden(sql: SqlStore): void {
  type Row = VersionSize & { readonly year: number; readonly inForce: number };
  const rows = sql.rows<Row>(
    `SELECT year, version, saved_at AS savedAt, ${BYTES} AS bytes,
      (year, version) IN (SELECT year, version FROM in_force) AS inForce
      FROM plans ORDER BY inForce DESC, saved_at DESC, version DESC`,
  );
  let bytes = 0;
  for (const { year, version, bytes: own, inForce } of rows) {
    bytes += own;
    if (inForce === 0 && bytes > MOST_GARDEN_BYTES) letGo(sql, year, [version]);
  }
}

function letGo(sql: SqlStore, year: number, gone: readonly number[]): void {
  if (gone.length === 0) return;
  sql.rows(
    "DELETE FROM plans WHERE year = ?1 AND version IN (SELECT value FROM json_each(?2))",
    ...[year, JSON.stringify(gone)],
  );
}
