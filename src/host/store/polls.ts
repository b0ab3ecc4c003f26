import { OWED_COLUMNS, type OwedBuild } from "./build.ts";
import { bodyOf, type FeedKey } from "./feeds.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * Whatever a poll needs to know: whether its link was revoked (0 or 1), the build that is owed, and the feed
 * as it was last written, null where it never was.
 */
export type PollRecord = OwedBuild & {
  readonly revoked: number;
  readonly print: string | null;
  readonly size: number | null;
  readonly lastModified: number | null;
  /** The check sum over those three; null in a row from before there were any. */
  readonly sum: number | null;
  readonly bodySum: number | null;
  /** The first piece of its bytes; null where there are none, or the client may have them. */
  readonly bytes: ArrayBuffer | null;
};

/** By which deploy and at which instant [ms since 1970 UTC] a poll is answered, and what its client said it has. */
type Asking = {
  readonly code: string;
  readonly now: number;
  /** Its tags, empty where it said nothing at all; null where it gave a date alone. Bytes come along unless these name them. */
  readonly held: string | null;
};

/** The one look of a poll into the store; null where there is no garden. */
export function pollRecord(
  sql: SqlStore,
  { link, feed }: FeedKey,
  { code, now, held }: Asking,
): PollRecord | null {
  return firstRow<PollRecord>(
    sql,
    `SELECT ${OWED_COLUMNS},
      EXISTS (SELECT 1 FROM revoked WHERE revoked.link = ?3 OR revoked.copy = ?3) AS revoked,
      polled.print, polled.size, polled.last_modified AS lastModified, polled.sum, polled.body_sum AS bodySum,
      CASE WHEN instr(?5, polled.print) = 0 THEN
        (SELECT bytes FROM pieces WHERE name = ?6 AND part = 0) END AS bytes
      FROM garden LEFT JOIN build LEFT JOIN feeds AS polled ON polled.link = ?3 AND polled.feed = ?4`,
    ...[code, now, link, feed, held, bodyOf({ link, feed })],
  );
}
