import type { Ledger } from "../../app/index.ts";
import { byteLength, endsWhole, zip } from "./bytes.ts";
import { dropPieces, loadBytes, PIECE_BYTES, storeBytes } from "./pieces.ts";
import { bytesSum, rowSum, storedInstant } from "./sealed.ts";
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
    /** The check sum over its gzipped bytes; null for those from before there were any. */
    readonly bodySum: number | null;
  };

const COLUMNS =
  "link, feed, build, code, until, size, print, last_modified AS lastModified, body_sum AS bodySum";

/** What of a feed's record decides what a client is told. */
type FeedSummed = Pick<FeedRecord, "size" | "print" | "lastModified">;

const feedSum = ({ size, print, lastModified }: FeedSummed) => rowSum([size, print, lastModified]);

/** Whether a feed's record is what was stored; one from before there were check sums counts as it is. */
export function isWholeFeed(record: FeedSummed & { readonly sum: number | null }): boolean {
  return record.sum === null || record.sum === feedSum(record);
}

/**
 * The record of a feed; null where it was never written. One that is damaged is that of a feed whose bytes are not to be had, so that it
 * is written anew.
 */
export function feedRecord(sql: SqlStore, { link, feed }: FeedKey): FeedRecord | null {
  type Row = FeedRecord & { readonly sum: number | null };
  const query = `SELECT ${COLUMNS}, sum FROM feeds WHERE link = ?1 AND feed = ?2`;
  const row = firstRow<Row>(sql, query, link, feed);
  if (row === null) return null;
  const { sum, ...record } = row;
  return isWholeFeed(row) ? record : { ...record, size: 0, print: "", lastModified: 0 };
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
  record: FeedKey & Pick<FeedRecord, "size" | "bodySum">,
  first: ArrayBuffer | null = null,
): Uint8Array<ArrayBuffer> | null {
  const alone = first && new Uint8Array(first);
  const isAlone = alone !== null && alone.length < PIECE_BYTES;
  const bytes = isAlone ? alone : loadBytes(sql, bodyOf(record));
  return bytes !== null && isWholeBody(record, bytes) ? bytes : null;
}

function isWholeBody(
  { size, bodySum }: Pick<FeedRecord, "size" | "bodySum">,
  bytes: Uint8Array,
): boolean {
  return endsWhole(bytes, size) && (bodySum === null || bodySum === bytesSum(bytes));
}

type StoredEntry = Ledger["entries"][string];

type LedgerRow = Omit<StoredEntry, "fingerprint" | "when"> & {
  readonly event: string;
  readonly print: string;
  readonly days: string;
  readonly sum: number | null;
};

/** What a feed last told of each event; null where nothing of it is stored. */
export function feedLedger(sql: SqlStore, { link, feed }: FeedKey): Ledger | null {
  const rows = sql.rows<LedgerRow>(
    "SELECT event, print, sequence, stamp, days, text, sum FROM ledger WHERE link = ?1 AND feed = ?2 ORDER BY event",
    ...[link, feed],
  );
  if (rows.length === 0) return null;
  const good = rows.filter(isWholeEntry);
  // Of an entry that is damaged nothing is believed: it counts as one told as often as any, and is written anew.
  const most = (of: (row: LedgerRow) => number) => Math.max(0, ...good.map(of));
  const lost = { sequence: most((row) => row.sequence), stamp: most((row) => row.stamp) };
  const entries = rows.map((row) => {
    const { event, print, sequence, stamp, days, text } = row;
    const entry = isWholeEntry(row)
      ? { fingerprint: print, sequence, stamp, when: days, text: whole(text) }
      : { fingerprint: "", ...lost, when: "", text: null };
    return [event, entry] as const;
  });
  return { entries: Object.fromEntries(entries) };
}

/** Whether an entry is what was stored; one from before there were check sums counts as it is. */
function isWholeEntry(row: LedgerRow): boolean {
  return row.sum === null || row.sum === entrySum(row);
}

const entrySum = ({ event, print, sequence, stamp, days, text }: Omit<LedgerRow, "sum">) =>
  rowSum([event, print, sequence, stamp, days, text]);

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
export function storeFeedBytes(
  sql: SqlStore,
  record: Omit<FeedRecord, "bodySum">,
  bytes: Uint8Array,
): void {
  const { link, feed, build, code, until, size, print, lastModified } = record;
  const sum = feedSum({ size, print, lastModified });
  sql.rows(
    `INSERT OR REPLACE INTO feeds (link, feed, build, code, until, size, print, last_modified, sum, body_sum)
      VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)`,
    ...[link, feed, build, code, until, size, print, lastModified, sum, bytesSum(bytes)],
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
  const sum = entrySum({ event, print: fingerprint, sequence, stamp, days: when, text });
  sql.rows(
    `INSERT INTO ledger (link, feed, event, print, sequence, stamp, days, text, sum) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
      ON CONFLICT (link, feed, event) DO UPDATE SET print = ?4, sequence = ?5, stamp = ?6, days = ?7, text = ?8, sum = ?9`,
    ...[link, feed, event, fingerprint, sequence, stamp, when, text, sum],
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
    `INSERT INTO feeds (link, feed, build, code, until, size, print, last_modified, sum)
      VALUES (?1, ?2, 0, '', 0, 0, '', ?3, ?4)`,
    ...[link, feed, lastModified, feedSum({ size: 0, print: "", lastModified })],
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

/** Makes every feed that is not what was stored one to be written anew, and of its ledger each entry that is not; gives how many. */
export function mendFeeds(sql: SqlStore): number {
  type Row = FeedRecord & { readonly sum: number | null };
  const feeds = sql.rows<Row>(`SELECT ${COLUMNS}, sum FROM feeds`);
  const bad = feeds.filter(
    (row) => !isWholeFeed(row) || (row.size > 0 && feedBody(sql, row) === null),
  );
  for (const { link, feed, lastModified } of bad) {
    const mended = { size: 0, print: "", lastModified: storedInstant(lastModified) };
    sql.rows(
      "UPDATE feeds SET build = 0, size = 0, print = '', last_modified = ?3, sum = ?4 WHERE link = ?1 AND feed = ?2",
      ...[link, feed, mended.lastModified, feedSum(mended)],
    );
  }
  return bad.length + feeds.reduce((sum, key) => sum + mendLedger(sql, key), 0);
}

function mendLedger(sql: SqlStore, { link, feed }: FeedKey): number {
  const rows = sql.rows<LedgerRow>(
    "SELECT event, print, sequence, stamp, days, text, sum FROM ledger WHERE link = ?1 AND feed = ?2",
    ...[link, feed],
  );
  const bad = rows.filter((row) => !isWholeEntry(row));
  const ledger = bad.length === 0 ? null : feedLedger(sql, { link, feed });
  for (const { event } of bad) {
    const entry = ledger?.entries[event];
    if (entry) storeEntry(sql, { link, feed, event, entry });
  }
  return bad.length;
}
