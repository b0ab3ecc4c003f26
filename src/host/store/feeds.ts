import type { Ledger } from "../../views/calendar/ledger.ts";
import { endsWhole, pack, unpack } from "./bytes.ts";
import {
  GARDEN_STATEMENTS,
  gardenFrom,
  gardenStatements,
  type MadeFrom,
  type StoredGarden,
} from "./gardens.ts";

/** Which feed of a garden: the link's part of the path and what follows the link (`quiet/tasks.ics`). */
export type FeedKey = { readonly garden: string; readonly link: string; readonly feed: string };

/**
 * What a poll needs. `packed` is the body as the store keeps it, null where it is not whole or is held already, `size` its
 * plain bytes, `lastModified` whole seconds [ms].
 */
export type Polled = {
  readonly revoked: boolean;
  readonly revision: number;
  readonly stored:
    | (MadeFrom & {
        readonly packed: string | null;
        readonly size: number;
        readonly print: string;
        readonly lastModified: number;
      })
    | null;
};

/**
 * Everything a poll needs in one query, or null where there is no such garden. Of a body whose print is `held` nothing is
 * brought along: it is most of what a query costs, and most polls need none.
 */
export async function pollFeed(
  db: D1Database,
  key: FeedKey,
  held: string | null = null,
): Promise<Polled | null> {
  const row = await db
    .prepare(
      `SELECT g.revision AS now, ${OWNED_NO_MORE} OR r.link IS NOT NULL AS revoked, iif(f.print = ?4, NULL, f.body) AS packed, f.size,
          f.print, f.last_modified AS lastModified, f.revision, f.code, f.until
        FROM gardens AS g
        LEFT JOIN revoked AS r ON r.garden = g.id AND r.link = ?2
        LEFT JOIN feeds AS f ON f.garden = g.id AND f.link = ?2 AND f.feed = ?3
        WHERE g.id = ?1`,
    )
    .bind(key.garden, key.link, key.feed, held)
    .first<PolledRow>();
  if (row === null) return null;
  const { now, revoked, ...feed } = row;
  const stored = isStored(feed) ? { ...feed, packed: wholeOf(feed) } : null;
  return { revoked: revoked !== 0, revision: now, stored };
}

/** Whether a link (`?2`) is an owner's of a serial that opens no more. */
const OWNED_NO_MORE = `(?2 GLOB 'owner-*' AND ?2 <> 'owner-' || g.owner AND ?2 IS NOT 'owner-' || g.owner_next)`;

function wholeOf({ packed, size }: StoredFeed): string | null {
  return packed !== null && endsWhole(packed, size) ? packed : null;
}

type StoredFeed = NonNullable<Polled["stored"]>;
type Maybe = { readonly [Name in keyof StoredFeed]: StoredFeed[Name] | null };
type PolledRow = Maybe & { readonly now: number; readonly revoked: number };

function isStored(feed: Maybe): feed is StoredFeed {
  return feed.print !== null;
}

/** A feed as it was last written, to be written again: whether its body is whole, and its ledger, null where it can't be read. */
export type FeedRecord = MadeFrom & {
  readonly link: string;
  readonly feed: string;
  readonly version: number;
  readonly print: string;
  readonly lastModified: number;
  readonly whole: boolean;
  readonly ledger: Ledger | null;
};

const RECORD =
  "link, feed, version, print, last_modified AS lastModified, substr(body, -12) AS tail, size, ledger, revision, code, until";

type RecordRow = Omit<FeedRecord, "whole" | "ledger"> & {
  readonly tail: string;
  readonly size: number;
  readonly ledger: string;
};

function recordOf({ tail, size, ledger, ...rest }: RecordRow): FeedRecord {
  return { ...rest, whole: endsWhole(tail, size), ledger: ledgerOf(ledger) };
}

function ledgerOf(packed: string): Ledger | null {
  try {
    return JSON.parse(unpack(packed));
  } catch {
    return null;
  }
}

/** Feeds of a garden that one run writes; the rest wait for the next. Source: the platform's free 50 queries a run, for three gardens. */
const FEEDS_AT_ONCE = 10;

/** Gardens of a kind that a run chooses from, so that it never reads them all. */
const CHOSEN_FROM = 200;

/** A garden and some of its feeds, seen at one moment: one feed by its key, or all that `code` at `now` finds stale. */
export async function loadFeeds(
  db: D1Database,
  garden: string,
  which: FeedKey | { readonly code: string; readonly now: number },
): Promise<{ readonly garden: StoredGarden; readonly feeds: readonly FeedRecord[] } | null> {
  const wanted =
    "feed" in which
      ? db
          .prepare(`SELECT ${RECORD} FROM feeds WHERE garden = ?1 AND link = ?2 AND feed = ?3`)
          .bind(garden, which.link, which.feed)
      : db
          .prepare(`SELECT f.* FROM (SELECT garden, ${RECORD} FROM feeds WHERE garden = ?1) AS f
            JOIN gardens AS g ON g.id = f.garden
            WHERE f.revision <> g.revision OR f.code <> ?2 OR f.until <= ?3 ORDER BY random() LIMIT ${FEEDS_AT_ONCE}`)
          .bind(garden, which.code, which.now);
  const results = await db.batch<unknown>([...gardenStatements(db, garden), wanted]);
  const stored = gardenFrom(results);
  const rows = (results[GARDEN_STATEMENTS]?.results ?? []) as RecordRow[];
  return stored && { garden: stored, feeds: rows.map(recordOf) };
}

/** What a cron run looks for: feeds stale for `code` at `now`, in so many gardens at `most`. */
export type Looking = { readonly code: string; readonly now: number; readonly most: number };

/**
 * Ids of gardens that changed since they were last written, or with a feed that `code` at `now` finds stale. In no order,
 * so that some which can't be written never keep the others waiting for good. Reads as many rows however many gardens there
 * are: changed gardens are noted by a trigger, the rest found by an index.
 */
export async function staleGardens(
  db: D1Database,
  { code, now, most }: Looking,
): Promise<readonly string[]> {
  const some = (from: string) =>
    `SELECT garden FROM (SELECT garden FROM ${from} LIMIT ${CHOSEN_FROM})`;
  const kinds = [
    some("waiting"),
    some("feeds WHERE code = ?1 AND until <= ?2"),
    some("feeds WHERE code < ?1"),
    some("feeds WHERE code > ?1"),
  ];
  const found = await db
    .prepare(`SELECT garden FROM (${kinds.join(" UNION ")}) ORDER BY random() LIMIT ?3`)
    .bind(code, now, most)
    .all<{ readonly garden: string }>();
  return found.results.map((row) => row.garden);
}

/** Forgets a feed that no link has any more, so that it does not wait for ever. */
export async function dropFeed(db: D1Database, { garden, link, feed }: FeedKey): Promise<void> {
  await db
    .prepare("DELETE FROM feeds WHERE garden = ?1 AND link = ?2 AND feed = ?3")
    .bind(garden, link, feed)
    .run();
}

/** Notes that a changed garden was written, unless some feed of it still is as it was before the change. */
export async function noLongerWaiting(db: D1Database, garden: string): Promise<void> {
  await db
    .prepare(
      `DELETE FROM waiting WHERE garden = ?1 AND NOT EXISTS (SELECT 1 FROM feeds AS f
        JOIN gardens AS g ON g.id = f.garden WHERE f.garden = ?1 AND f.revision <> g.revision)`,
    )
    .bind(garden)
    .run();
}

/** A feed just written. */
export type WrittenFeed = MadeFrom & {
  readonly text: string;
  readonly print: string;
  readonly lastModified: number;
  readonly ledger: Ledger;
};

/**
 * Stores a feed over the record it was written from (null: there was none) and says true; false where somebody else was
 * faster, and then theirs stays.
 */
export async function storeFeed(
  db: D1Database,
  key: FeedKey,
  { over, written }: { readonly over: FeedRecord | null; readonly written: WrittenFeed },
): Promise<boolean> {
  const { text, print: fingerprint, lastModified, ledger, revision, code, until } = written;
  const done = await db
    .prepare(over === null ? INSERT : UPDATE)
    .bind(
      ...[key.garden, key.link, key.feed, over?.version ?? 0, pack(text), byteLength(text)],
      ...[fingerprint, lastModified, pack(JSON.stringify(ledger)), revision, code, until],
    )
    .run();
  return done.meta.changes > 0;
}

const INSERT = `INSERT INTO feeds (garden, link, feed, version, body, size, print, last_modified, ledger, revision, code, until)
  SELECT ?1, ?2, ?3, ?4 + 1, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12
  WHERE NOT EXISTS (SELECT 1 FROM revoked WHERE garden = ?1 AND link = ?2) ON CONFLICT DO NOTHING`;

const UPDATE = `UPDATE feeds SET version = version + 1, body = ?5, size = ?6, print = ?7, last_modified = ?8,
  ledger = ?9, revision = ?10, code = ?11, until = ?12
  WHERE garden = ?1 AND link = ?2 AND feed = ?3 AND version = ?4`;

function byteLength(text: string): number {
  return new TextEncoder().encode(text).length;
}
