import type { Ledger } from "../../app/index.ts";
import { byteLength, endsWhole, zip } from "./bytes.ts";
import { dropPieces, loadBytes, PIECE_BYTES, storeBytes } from "./pieces.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/** Which feed of a garden: the link's part of the path and what follows the link (`quiet/tasks.ics`). */
export type FeedKey = { readonly link: string; readonly feed: string };

/** The build that a feed shows: its number, the code that made it, and the instant [ms] at which its day turns. */
export type FeedBuild = { readonly build: number; readonly code: string; readonly until: number };

/**
 * A feed as it was last written, without its body: the build it shows, the size of its plain bytes, their print, and the
 * instant they last changed [ms since 1970 UTC, whole seconds].
 */
export type FeedRecord = FeedKey &
  FeedBuild & {
    readonly size: number;
    readonly print: string;
    readonly lastModified: number;
  };

const COLUMNS = "link, feed, build, code, until, size, print, last_modified AS lastModified";

/** The record of a feed; null where it was never written. */
export function feedRecord(sql: SqlStore, { link, feed }: FeedKey): FeedRecord | null {
  const query = `SELECT ${COLUMNS} FROM feeds WHERE link = ?1 AND feed = ?2`;
  return firstRow<FeedRecord>(sql, query, link, feed);
}

/** Every feed that shows another build than that one. */
export function feedsBehind(sql: SqlStore, build: number): readonly FeedRecord[] {
  const query = `SELECT ${COLUMNS} FROM feeds WHERE build <> ?1 ORDER BY link, feed`;
  return sql.rows<FeedRecord>(query, build);
}

/** Where a feed's bytes lie among the pieces. */
export const bodyOf = ({ link, feed }: FeedKey) => `body/${link}/${feed}`;

/** A feed's gzipped bytes; null where they are not whole. `first` is their first piece where it is at hand, mostly the only one. */
export function feedBody(
  sql: SqlStore,
  record: FeedKey & Pick<FeedRecord, "size">,
  first: ArrayBuffer | null = null,
): Uint8Array<ArrayBuffer> | null {
  const alone = first && new Uint8Array(first);
  if (alone && alone.length < PIECE_BYTES) return endsWhole(alone, record.size) ? alone : null;
  const bytes = loadBytes(sql, bodyOf(record));
  return bytes !== null && endsWhole(bytes, record.size) ? bytes : null;
}

type StoredEntry = Ledger["entries"][string];

type LedgerRow = Omit<StoredEntry, "fingerprint" | "when"> & {
  readonly event: string;
  readonly print: string;
  readonly days: string;
};

/** What a feed last told of each event; null where nothing of it is stored. */
export function feedLedger(sql: SqlStore, { link, feed }: FeedKey): Ledger | null {
  const rows = sql.rows<LedgerRow>(
    "SELECT event, print, sequence, stamp, days, text FROM ledger WHERE link = ?1 AND feed = ?2 ORDER BY event",
    ...[link, feed],
  );
  if (rows.length === 0) return null;
  const entries = rows.map(({ event, print, sequence, stamp, days, text }) => {
    return [event, { fingerprint: print, sequence, stamp, when: days, text: whole(text) }] as const;
  });
  return { entries: Object.fromEntries(entries) };
}

/** An event's text, null where it was cut short: then it counts as one that was gone, and is written anew. */
function whole(text: string | null): string | null {
  return text?.startsWith("BEGIN:VEVENT") && text.endsWith("END:VEVENT\r\n") ? text : null;
}

/** A feed just written, over the ledger it was written from (null: there was none). */
export type WrittenFeed = FeedKey &
  FeedBuild & {
    readonly text: string;
    readonly print: string;
    readonly lastModified: number;
    readonly ledger: Ledger;
    readonly over: Ledger | null;
  };

/** Stores a feed, of its ledger only what has changed. */
export function storeFeed(sql: SqlStore, written: WrittenFeed): void {
  storeFeedBytes(sql, { ...written, size: byteLength(written.text) }, zip(written.text));
  storeLedger(sql, written);
}

/** Stores a feed's record and its gzipped bytes. */
export function storeFeedBytes(sql: SqlStore, record: FeedRecord, bytes: Uint8Array): void {
  const { link, feed, build, code, until, size, print, lastModified } = record;
  sql.rows(
    `INSERT OR REPLACE INTO feeds (link, feed, build, code, until, size, print, last_modified)
      VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)`,
    ...[link, feed, build, code, until, size, print, lastModified],
  );
  storeBytes(sql, bodyOf(record), bytes);
}

/** Stores what a feed told of each event: the entries that differ from those it was written over. */
export function storeLedger(
  sql: SqlStore,
  { link, feed, ledger, over }: Pick<WrittenFeed, "link" | "feed" | "ledger" | "over">,
): void {
  const had = over?.entries ?? {};
  for (const [event, entry] of Object.entries(ledger.entries))
    if (had[event] !== entry) storeEntry(sql, { link, feed, event, entry });
  for (const event of Object.keys(had))
    if (!Object.hasOwn(ledger.entries, event))
      sql.rows(
        "DELETE FROM ledger WHERE link = ?1 AND feed = ?2 AND event = ?3",
        ...[link, feed, event],
      );
}

type EntryToStore = FeedKey & { readonly event: string; readonly entry: StoredEntry };

function storeEntry(sql: SqlStore, { link, feed, event, entry }: EntryToStore): void {
  const { fingerprint, sequence, stamp, when, text } = entry;
  sql.rows(
    `INSERT INTO ledger (link, feed, event, print, sequence, stamp, days, text) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
      ON CONFLICT (link, feed, event) DO UPDATE SET print = ?4, sequence = ?5, stamp = ?6, days = ?7, text = ?8`,
    ...[link, feed, event, fingerprint, sequence, stamp, when, text],
  );
}

/** When a feed last changed [ms since 1970 UTC], and each event's sequence and stamp in it. */
export type FeedRevisions = {
  readonly lastModified: number;
  readonly events: Readonly<Record<string, readonly [sequence: number, stamp: number]>>;
};

/** Notes what a feed once told, without its text, so that whatever it tells next is newer. A feed that is there stays. */
export function restoreRevisions(
  sql: SqlStore,
  { link, feed }: FeedKey,
  { lastModified, events }: FeedRevisions,
): void {
  if (feedRecord(sql, { link, feed }) !== null) return;
  sql.rows(
    `INSERT INTO feeds (link, feed, build, code, until, size, print, last_modified)
      VALUES (?1, ?2, 0, '', 0, 0, '', ?3)`,
    ...[link, feed, lastModified],
  );
  for (const [event, [sequence, stamp]] of Object.entries(events)) {
    const entry = { fingerprint: "", sequence, stamp, when: "", text: null };
    storeEntry(sql, { link, feed, event, entry });
  }
}

/** Notes that a feed's bytes are those of that build too. */
export function markFeed(sql: SqlStore, { link, feed }: FeedKey, shows: FeedBuild): void {
  sql.rows(
    "UPDATE feeds SET build = ?3, code = ?4, until = ?5 WHERE link = ?1 AND feed = ?2",
    ...[link, feed, shows.build, shows.code, shows.until],
  );
}

/** Forgets a feed. */
export function dropFeed(sql: SqlStore, key: FeedKey): void {
  const { link, feed } = key;
  sql.rows("DELETE FROM feeds WHERE link = ?1 AND feed = ?2", link, feed);
  sql.rows("DELETE FROM ledger WHERE link = ?1 AND feed = ?2", link, feed);
  dropPieces(sql, bodyOf(key));
}

/** Forgets every feed of a link. */
export function dropFeedsOf(sql: SqlStore, link: string): void {
  const feeds = sql.rows<{ readonly feed: string }>("SELECT feed FROM feeds WHERE link = ?1", link);
  for (const { feed } of feeds) dropFeed(sql, { link, feed });
}
