import { createHash } from "node:crypto";
import type { Baseline } from "../../app/build.ts";
import type { Event } from "../../views/events/event.ts";
import { eventPath, type Feed, readFeed } from "../links/feeds.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, readSegment } from "../links/segment.ts";
import {
  dropFeed,
  type FeedKey,
  type FeedRecord,
  loadFeeds,
  noLongerWaiting,
  staleGardens,
  storeFeed,
} from "../store/feeds.ts";
import {
  eventsIn,
  gardenIn,
  type MadeFrom,
  type StoredGarden,
  storeBaseline,
  storeSchedule,
} from "../store/gardens.ts";
import { storeReading } from "../store/plans.ts";
import type { AppContext } from "./app-context.ts";
import { lastModifiedAt } from "./validators.ts";

/** Times that a garden which changes while it is being told is told again. */
const TRIES = 3;

/**
 * Writes one feed, or every stale one of a garden, from what is stored. Throws where it can't be written, and leaves
 * what was stored; of many, one that fails keeps no other waiting. A garden that changes meanwhile is told again. A
 * feed of a bed or a person that no plan has is not begun.
 */
export async function render(
  context: AppContext,
  garden: string,
  which: FeedKey | "stale",
): Promise<void> {
  await renderDue(context, garden, which);
  if (which === "stale") await noLongerWaiting(context.db, garden);
}

async function renderDue(
  context: AppContext,
  garden: string,
  which: FeedKey | "stale",
): Promise<void> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    const now = context.now();
    const had = await loadFeeds(
      context.db,
      garden,
      which === "stale" ? { code: context.code, now } : which,
    );
    if (had === null) return;
    if (await readAnew(context, had.garden)) continue;
    const [over = null] = had.feeds;
    const wanted = which === "stale" ? had.feeds.map(again) : [{ ...which, over }];
    const due = wanted.filter((one) => isDue(context, had.garden, one.over));
    // A garden that no calendar follows yet is told all the same, for its pages to know what was told before.
    if (due.length === 0 && which !== "stale") return;
    const at = await scheduleAt(context, had.garden, now);
    if (at !== null) return renderEach(context, at, due);
  }
  throw new Error("it changed each time it was told");
}

function again(over: FeedRecord): FeedToRender {
  return { ...over, over };
}

function isDue(context: AppContext, { revision }: StoredGarden, over: FeedRecord | null): boolean {
  return over === null || !over.whole || isStale(context, revision, over);
}

/** One alone may throw. */
async function renderEach(
  context: AppContext,
  at: RenderSource,
  due: readonly FeedToRender[],
): Promise<void> {
  const [first, ...more] = due;
  if (first && more.length === 0) return renderOne(context, at, first);
  for (const one of due) await logged(at.garden.id, () => renderOne(context, at, one));
}

/** Whether a feed is to be written again: the garden or the code has changed, or its horizon has passed. */
export function isStale({ code, now }: AppContext, revision: number, made: MadeFrom): boolean {
  return made.revision !== revision || made.code !== code || made.until <= now();
}

/** How far apart the cron's runs lie [ms], as wrangler.toml has it. */
const RUNS_APART_MS = 600_000;

/**
 * The cron's work: gardens with stale feeds, one after another, so that one that fails keeps no other waiting. Where there
 * are several databases, each run takes the next in turn.
 */
export async function renderWaiting(all: AppContext): Promise<void> {
  const databases = [...all.databases.values()];
  const turn = Math.floor(all.now() / RUNS_APART_MS) % databases.length;
  const context = { ...all, db: databases[turn] ?? all.db };
  const looking = { code: context.code, now: context.now(), most: context.gardensARun };
  const waiting = await staleGardens(context.db, looking);
  for (const garden of waiting) await logged(garden, () => render(context, garden, "stale"));
}

/** Does the work and says whether it went well; a failure is logged with the garden's name and never with a link. */
export async function logged(garden: string, work: () => Promise<void>): Promise<boolean> {
  try {
    await work();
    return true;
  } catch (error) {
    console.error(`garden ${garden}: a feed could not be written:`, error);
    return false;
  }
}

/** Reads the texts again that an older code read, and says whether it did. One that no longer passes keeps its old reading. */
async function readAnew({ db, core, code }: AppContext, garden: StoredGarden): Promise<boolean> {
  const old = garden.plans.filter((saved) => saved.readBy !== code);
  for (const saved of old) {
    const { text, file, beside } = saved;
    const { plan } = core.readPlan(text, { garden: garden.id, file, beside });
    await storeReading(db, garden.id, { ...saved, plan: plan ?? saved.plan, readBy: code });
  }
  return old.length > 0;
}

/**
 * The garden told: as it was last, where that still holds, so that a render cut short goes on from there and the
 * garden's other feeds need no telling of their own; else told now and kept. Null where the garden changed meanwhile.
 */
async function scheduleAt(
  context: AppContext,
  stored: StoredGarden,
  now: number,
): Promise<RenderSource | null> {
  const events = eventsIn(stored);
  if (stored.schedule && events && !isStale(context, stored.revision, stored.schedule))
    return { garden: stored, events, until: stored.schedule.until, now };
  const garden = { ...gardenIn(stored), usual: await baselineIn(context, stored) };
  const horizon = context.core.horizonAt(garden, now);
  const schedule = context.core.tell(garden, horizon, stored.standing);
  const isStored = await storeSchedule(context.db, stored, {
    ...schedule,
    code: context.code,
    until: horizon.until,
    now,
  });
  return isStored ? { garden: stored, events: schedule.events, until: horizon.until, now } : null;
}

/** The usual days of the plans in force: as they were kept, else reckoned now and kept. */
export async function baselineIn(
  { db, core }: AppContext,
  stored: StoredGarden,
): Promise<Baseline> {
  if (stored.usual !== null) return stored.usual;
  const baseline = core.usualOf(gardenIn(stored));
  await storeBaseline(db, stored, baseline);
  return baseline;
}

type RenderSource = {
  readonly garden: StoredGarden;
  readonly events: readonly Event[];
  readonly until: number;
  readonly now: number;
};

type FeedToRender = {
  readonly link: string;
  readonly feed: string;
  readonly over: FeedRecord | null;
};

async function renderOne(
  context: AppContext,
  at: RenderSource,
  { link, feed: path, over }: FeedToRender,
): Promise<void> {
  const { garden, until, now } = at;
  const opened = readSegment(garden.id, link);
  const feed = opened && readFeed(opened, path);
  if (!opened || !feed) return dropFeed(context.db, { garden: garden.id, link, feed: path });
  if (over === null && !isKnown(garden, feed)) return;
  const { text, ledger } = context.core.writeCalendar({
    ...calendarContent(context, at, feed),
    link: await linkOf(context, garden, opened),
    cause: causeOf(context, at, over),
    ledger: over?.ledger ?? null,
  });
  const fingerprint = createHash("sha256").update(text).digest("base64url");
  const lastModified =
    over?.print === fingerprint
      ? over.lastModified
      : lastModifiedAt(now, over?.lastModified ?? null);
  const from = { revision: garden.revision, code: context.code, until };
  const written = { text, print: fingerprint, lastModified, ledger, ...from };
  await storeFeed(context.db, { garden: garden.id, link, feed: path }, { over, written });
}

function calendarContent({ core }: AppContext, { garden, events }: RenderSource, feed: Feed) {
  const { quiet, reader } = feed.choice;
  const chosen = core.choose(events, feed.choice);
  return { garden: garden.id, name: nameOf(garden, feed), events: chosen, quiet, reader };
}

/** Whether a plan has the bed and the person a feed is for. */
function isKnown({ plans }: StoredGarden, { choice }: Feed): boolean {
  const { bed, of } = choice;
  const hasBed = bed === null || plans.some(({ plan }) => plan.beds.some((b) => b.key === bed));
  const person = of === "household" ? null : of.person;
  const hasPerson =
    person === null || plans.some(({ plan }) => plan.people.some((p) => p.key === person));
  return hasBed && hasPerson;
}

/** The instant [ms] of the newest of the causes for writing again: plans or diary, the horizon, the code, a ledger lost. */
function causeOf(
  { code }: AppContext,
  { garden, now }: RenderSource,
  over: FeedRecord | null,
): number {
  const causes = [garden.changedAt];
  if (over !== null && over.until <= now) causes.push(over.until);
  if (over !== null && (over.code !== code || over.ledger === null)) causes.push(now);
  return Math.max(...causes);
}

/** The name a calendar shows: the garden's, and whose or which it is. */
function nameOf({ plans }: StoredGarden, { choice }: Feed): string {
  const newest = [...plans].reverse().map(({ plan }) => plan);
  const { of, bed, kind } = choice;
  const whose =
    of === "household"
      ? null
      : newest.flatMap((plan) => plan.people).find((person) => person.key === of.person)?.name;
  const where = newest.flatMap((plan) => plan.beds).find((b) => b.key === bed)?.name;
  const rest = { sessions: "", tasks: "all tasks", warnings: "warnings" }[kind];
  return [newest[0]?.name ?? "Garden", whose ?? where ?? rest].filter(Boolean).join(", ");
}

/**
 * What gives an event's page under a link. A reader has none, since pages there lead to answers, and an owner none, since
 * what opens everything belongs in no calendar.
 */
async function linkOf(
  { key, origin }: AppContext,
  garden: StoredGarden,
  link: Link,
): Promise<((event: { readonly key: string }) => string) | null> {
  if (link.role !== "helper") return null;
  const base = `${origin ?? garden.origin}${await pathOf(link, key)}`;
  return (event) => `${base}${eventPath(event.key)}`;
}
