import { logFailure } from "../log.ts";
import { buildRecord, discardBuild } from "../store/build.ts";
import { mendDamage } from "../store/damage.ts";
import { type FeedKey, feedBody, feedRecord, isWholeFeed } from "../store/feeds.ts";
import { opensAsOwner } from "../store/owners.ts";
import { type PollRecord, pollRecord } from "../store/polls.ts";
import type { SqlStore } from "../store/sql.ts";
import { catchUpIfOwed, catchUpOn, type GardenContext } from "../web/garden-context.ts";
import { type Coding, type Conditions, etagOf, isNotModified } from "../web/validators.ts";
import { writeFeed } from "./write-feeds.ts";

/** One poll of a feed over a good link: what the client holds, and the coding it takes. */
export type PollRequest = FeedKey & {
  readonly garden: string;
  readonly conditions: Conditions;
  readonly coding: Coding;
};

/**
 * The answer to a poll: the client has it already, or the whole body gzipped, `size` plain bytes; `nothing` where the link
 * was revoked, the garden is not there or no plan has such a feed; `later` where it can't be written just now.
 * `lastModified` in ms since 1970 UTC.
 */
export type PollAnswer =
  | { readonly kind: "same"; readonly etag: string; readonly lastModified: number }
  | {
      readonly kind: "whole";
      readonly etag: string;
      readonly lastModified: number;
      readonly body: Uint8Array<ArrayBuffer>;
    }
  | { readonly kind: "nothing" }
  | { readonly kind: "later" };

const NOTHING: PollAnswer = { kind: "nothing" };

/**
 * Answers a poll from stored bytes and nothing else. What is stale is built behind the answer, and the feed is written in front
 * of it only where nothing is stored, or not the whole.
 */
export async function answerPoll(context: GardenContext, asked: PollRequest): Promise<PollAnswer> {
  const { sql, code, now } = context;
  const { tags, since } = asked.conditions;
  const held = tags ?? (since === null ? "" : null);
  const record = pollRecord(sql, asked, { code, now: now(), held });
  if (record === null || !isOpen(sql, record, asked.link)) return NOTHING;
  const stored = answerStored(context, asked, record);
  if (stored !== null) {
    catchUpOn(record, context);
    return stored;
  }
  const answer = await writeFirst(context, asked);
  catchUpIfOwed(context);
  return answer;
}

/** Whether a link opens anything here: not revoked, and of an owner the serial in force. */
function isOpen(sql: SqlStore, record: PollRecord, link: string): boolean {
  if (record.revoked === 1) return false;
  const serial = /^owner-(\d+)$/.exec(link)?.[1];
  return serial === undefined || opensAsOwner(sql, Number(serial));
}

/** Writes the feed first; the year too, where it was never built. */
async function writeFirst(context: GardenContext, asked: PollRequest): Promise<PollAnswer> {
  const { sql } = context;
  try {
    if (buildRecord(sql).number === 0 && !(await context.buildNow())) return { kind: "later" };
    await writeFeed(context, await context.engine(), asked);
  } catch (error) {
    logFailure("writing a feed", error, asked.garden);
    discardBuild(sql);
    if (!(await writeMended(context, asked))) return { kind: "later" };
  }
  const record = feedRecord(sql, asked);
  if (record === null) return NOTHING;
  return answerStored(context, asked, { ...record, sum: null, bytes: null }) ?? { kind: "later" };
}

/** Writes the feed where something stored was damaged, is mended, and the year could be built then. */
async function writeMended(context: GardenContext, asked: PollRequest): Promise<boolean> {
  if (!mendDamage(context.sql, context.now()) || !(await context.buildNow())) return false;
  await writeFeed(context, await context.engine(), asked);
  return true;
}

type StoredFeed = Pick<PollRecord, "print" | "size" | "lastModified" | "sum" | "bodySum" | "bytes">;

/** What is stored, or that the client has it already; null where nothing is, or it wants bytes that are not whole. */
function answerStored(
  { sql, epoch, now }: GardenContext,
  { conditions, coding, ...key }: PollRequest,
  { print, size, lastModified, sum, bodySum, bytes }: StoredFeed,
): PollAnswer | null {
  if (print === null || size === null || lastModified === null) return null;
  if (!isWholeFeed({ print, size, lastModified, sum })) return null;
  const has = { etag: etagOf(print, epoch, coding), lastModified };
  if (isNotModified(conditions, { ...has, now: now() })) return { kind: "same", ...has };
  const body = feedBody(sql, { ...key, size, bodySum }, bytes);
  return body && { kind: "whole", ...has, body };
}
