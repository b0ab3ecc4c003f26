import { createHash } from "node:crypto";
import type { FeedInput } from "../../app/index.ts";
import type { Event, FeedChoice } from "../../app/records.ts";
import { eventPath, type Feed, readFeed } from "../links/feeds.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, readSegment } from "../links/segment.ts";
import { logFailure } from "../log.ts";
import { type BuildRecord, buildRecord } from "../store/build.ts";
import { allEvents } from "../store/events.ts";
import {
  dropFeed,
  type FeedKey,
  type FeedRecord,
  feedBody,
  feedLedger,
  feedRecord,
  feedsBehind,
  markFeed,
  storeFeed,
} from "../store/feeds.ts";
import { gardenRecord, loadGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import { isRevoked } from "../store/links.ts";
import type { GardenContext } from "../web/garden-context.ts";
import { lastModifiedAt } from "../web/validators.ts";
import type { Engine } from "./engine.ts";

/**
 * Writes every feed that shows an earlier build than the last, each whole or not at all. One that fails is logged, keeps what
 * it had and no other waiting; gives how many failed. `built`: the events that were just stored, null where none were.
 */
export async function writeFeedsBehind(
  context: GardenContext,
  engine: Engine,
  built: readonly Event[] | null = null,
): Promise<number> {
  const { sql } = context;
  const behind = feedsBehind(sql, buildRecord(sql).number);
  const events = behind.length === 0 ? [] : (built ?? allEvents(sql));
  let failed = 0;
  for (const key of behind)
    try {
      await writeFeed(context, engine, key, events);
    } catch (error) {
      failed += 1;
      logFailure("writing a feed", error, gardenRecord(sql)?.id);
    }
  return failed;
}

/**
 * Writes one feed of the last build from its events, stored or at hand. A feed of a bed or a person that no plan has is not begun; one
 * that its link has no more is forgotten. Throws where it can't be written, and leaves what was stored.
 */
export async function writeFeed(
  context: GardenContext,
  engine: Engine,
  key: FeedKey,
  events: readonly Event[] | null = null,
): Promise<void> {
  const { sql } = context;
  const link = readSegment(gardenRecord(sql)?.id ?? "", key.link);
  const feed = link && readFeed(link, key.feed);
  const path = link && (await pathOf(link, context.key));
  sql.transaction(() => {
    const stored = loadGarden(sql);
    if (stored === null || isRevoked(sql, key.link)) return;
    if (!link || !feed) {
      dropFeed(sql, key);
      return;
    }
    const over = feedRecord(sql, key);
    if (over === null && !isKnown(stored, feed)) return;
    const base = `${context.origin ?? stored.origin}${path}`;
    const content = { events: events ?? allEvents(sql), pageOf: pageUnder(link, base) };
    writeOver(context, engine, { stored, key, feed, over, ...content });
  });
}

type FeedToWrite = {
  readonly stored: StoredGarden;
  readonly key: FeedKey;
  readonly feed: Feed;
  readonly over: FeedRecord | null;
  readonly events: readonly Event[];
  readonly pageOf: FeedInput["link"];
};

function writeOver(
  context: GardenContext,
  engine: Engine,
  { stored, key, feed, over, events, pageOf }: FeedToWrite,
): void {
  const { sql, now } = context;
  const build = buildRecord(sql);
  const had = over && feedLedger(sql, key);
  const { choice } = feed;
  const { text, ledger } = engine.writeFeed({
    ...{ garden: stored.uids, name: nameOf(engine, stored, choice), choice, events },
    link: pageOf,
    clock: zoneOf(stored),
    cause: causeOf(context, stored, { over, isLedgerLost: had === null }),
    now: now(),
    ledger: had,
  });
  const print = createHash("sha256").update(text).digest("base64url");
  const shows = showing(build);
  if (over?.print === print && had !== null && feedBody(sql, over)) {
    markFeed(sql, key, shows);
    return;
  }
  const lastModified =
    over?.print === print ? over.lastModified : lastModifiedAt(now(), over?.lastModified ?? null);
  storeFeed(sql, { ...key, ...shows, text, print, lastModified, ledger, over: had });
}

function showing({ number, code, until }: BuildRecord) {
  return { build: number, code, until };
}

/** Whether a plan has the bed and the person a feed is for. */
function isKnown({ plans }: StoredGarden, { choice }: Feed): boolean {
  const { bed, of } = choice;
  const hasBed =
    bed === null || plans.some(({ summary }) => summary.beds.some(({ key }) => key === bed));
  const person = of === "household" ? null : of.person;
  const hasPerson =
    person === null ||
    plans.some(({ summary }) => summary.people.some(({ key }) => key === person));
  return hasBed && hasPerson;
}

/** The instant [ms] of the newest of the causes for writing again: plans or diary, the turn of the day, the code, a ledger lost. */
function causeOf(
  { code, now }: GardenContext,
  { changedAt }: StoredGarden,
  { over, isLedgerLost }: { readonly over: FeedRecord | null; readonly isLedgerLost: boolean },
): number {
  // What a clock that ran ahead has noted was no later than now.
  const causes = [Math.min(changedAt, now())];
  if (over !== null && over.until <= now()) causes.push(over.until);
  if (over !== null && (over.code !== code || isLedgerLost)) causes.push(now());
  return Math.max(...causes);
}

/** The name a calendar shows, by the newest names. */
export function nameOf(engine: Engine, { plans }: StoredGarden, choice: FeedChoice): string {
  return engine.feedName(plans.map(({ summary }) => summary).reverse(), choice);
}

/**
 * What gives an event's page under a link. A reader has none, since pages there lead to answers, and an owner none, since
 * what opens everything belongs in no calendar.
 */
function pageUnder(link: Link, base: string): FeedInput["link"] {
  return link.role === "helper" ? (event) => `${base}${eventPath(event.key)}` : null;
}
