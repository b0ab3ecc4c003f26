import type { Baseline, Garden, Horizon, Schedule } from "../../app/build.ts";
import type { Problem } from "../../base/problems/problem.ts";
import type { PublishedState } from "../../engine/schedule/scheduled-task.ts";
import type { Plan } from "../../garden/model/plan.ts";
import type { FeedChoice } from "../../views/calendar/choose-events.ts";
import type { Ledger } from "../../views/calendar/ledger.ts";
import type { CalendarInput } from "../../views/calendar/write.ts";
import type { Event } from "../../views/events/event.ts";
import { keyFrom } from "../links/mac.ts";
import { type Databases, databasesIn } from "../store/databases.ts";
import type { Memory } from "./memory.ts";

/** Where a plan's text comes from, and the texts of the files it names. */
export type PlanAt = {
  readonly garden: string;
  readonly file: string;
  readonly beside?: Readonly<Record<string, string>>;
};

/** The pure core as the shell calls it: a plan's text in, a calendar's text out. */
export type Core = {
  readPlan(
    text: string,
    at: PlanAt,
  ): { readonly plan: Plan | null; readonly problems: readonly Problem[] };
  horizonAt(garden: Garden, instant: number): Horizon;
  usualOf(garden: Garden): Baseline;
  tell(garden: Garden, horizon: Horizon, publishedState: PublishedState): Schedule;
  choose(events: readonly Event[], choice: FeedChoice): readonly Event[];
  writeCalendar(writing: CalendarInput): { readonly text: string; readonly ledger: Ledger };
};

/**
 * What a request works with. `now` gives ms since 1970 UTC; `code` tells one deploy from the next; `epoch` is part of
 * every validator; `origin` is where links in events lead, null for the address a garden was last published at.
 */
export type AppContext = {
  /** The database of the garden that is asked for; before one is, the first. */
  readonly db: D1Database;
  readonly databases: Databases;
  readonly limits: RateLimits;
  /** What polls have found of late; null: each asks the store. */
  readonly memory: Memory | null;
  /** Gardens that one run of the cron takes on, of those waiting. */
  readonly gardensARun: number;
  readonly key: CryptoKey;
  readonly core: Core;
  readonly now: () => number;
  readonly code: string;
  readonly epoch: string;
  readonly origin: string | null;
};

/** What holds back whoever writes or knocks too often; null: nothing does. */
export type RateLimits = {
  readonly writes: RateLimiter | null;
  readonly unauthorized: RateLimiter | null;
};

/** Source: the platform's free 50 queries a run. */
const GARDENS_A_RUN = 3;

const appContexts = new WeakMap<Bindings, AppContext>();

/**
 * The shell from the platform's bindings, made once an isolate, with the core and the clock it is first asked with. Throws without a secret, since every link could then be
 * forged.
 */
export async function appContextOf(
  bindings: Bindings,
  core: Core,
  now: () => number,
): Promise<AppContext> {
  const known = appContexts.get(bindings);
  if (known) return known;
  const context = await appContextFrom(bindings, core, now);
  appContexts.set(bindings, context);
  return context;
}

async function appContextFrom(
  bindings: Bindings,
  core: Core,
  now: () => number,
): Promise<AppContext> {
  const { DB, VERSION, SECRET, ORIGIN, EPOCH, WRITES, STRANGERS } = bindings;
  const gardensARun = Number(bindings.GARDENS_A_RUN ?? GARDENS_A_RUN) || GARDENS_A_RUN;
  const origin = ORIGIN ? new URL(ORIGIN).origin : null;
  return {
    db: DB,
    databases: databasesIn(bindings),
    gardensARun,
    memory: new Map(),
    limits: { writes: WRITES ?? null, unauthorized: STRANGERS ?? null },
    key: await keyFrom(SECRET ?? ""),
    core,
    now,
    code: `${VERSION.id} ${origin ?? ""}`.trim(),
    epoch: EPOCH ?? "0",
    origin,
  };
}
