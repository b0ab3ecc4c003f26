import { OWED_COLUMNS, type OwedBuild } from "./build.ts";
import type { FeedKey } from "./feeds.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * Whatever a poll needs to know: the owner's serials, whether its link was revoked (0 or 1), the build that is owed, and the feed
 * as it was last written, null where it never was.
 */
export type PollRecord = OwedBuild & {
  readonly owner: number;
  readonly ownerNext: number | null;
  readonly revoked: number;
  readonly print: string | null;
  readonly size: number | null;
  readonly lastModified: number | null;
};

/** The one look of a poll into the store, at an instant [ms since 1970 UTC]; null where there is no garden. */
export function pollRecord(
  sql: SqlStore,
  { link, feed }: FeedKey,
  { code, now }: { readonly code: string; readonly now: number },
): PollRecord | null {
  return firstRow<PollRecord>(
    sql,
    `SELECT ${OWED_COLUMNS}, owner, owner_next AS ownerNext,
      EXISTS (SELECT 1 FROM revoked WHERE revoked.link = ?3) AS revoked,
      polled.print, polled.size, polled.last_modified AS lastModified
      FROM garden LEFT JOIN build LEFT JOIN feeds AS polled ON polled.link = ?3 AND polled.feed = ?4`,
    ...[code, now, link, feed],
  );
}
