import { createHash } from "node:crypto";
import { buildBaseline, buildSchedule, type Garden, horizonAt } from "../../src/app/build.ts";
import { checkPlan } from "../../src/app/check.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import { householdOf } from "../../src/engine/schedule/household.ts";
import { scheduleTasks } from "../../src/engine/schedule/schedule-tasks.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { zip } from "../../src/host/store/bytes.ts";
import { chooseEvents, type FeedChoice } from "../../src/views/calendar/choose-events.ts";
import type { Ledger } from "../../src/views/calendar/ledger.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import type { Event } from "../../src/views/events/event.ts";
import { gardenText } from "./garden.ts";

const SOURCE = { garden: "bench", file: "plans/bench/2027.yaml", beside: {} };
const NOW = Date.UTC(2027, 4, 1, 18);
const DAY_MS = 86_400_000;

const IMRE: FeedChoice = {
  of: { person: "imre" },
  kind: "sessions",
  bed: null,
  quiet: false,
  reader: false,
};
const ALL: FeedChoice = { ...IMRE, of: "household", kind: "tasks" };

type Published = { readonly publishedState: PublishedState; readonly ledger: Ledger | null };
const NOTHING: Published = { publishedState: {}, ledger: null };

/** Reads the text of a plan of so many plantings. */
export function readingJob(plantings: number): () => unknown {
  const text = gardenText({ year: 2027, plantings });
  return () => readPlan(text, SOURCE, PRACTICES);
}

/** The same as saving it does: with the doubts that its season shows, and its beds once it is built. */
export function checkingJob(plantings: number): () => unknown {
  const text = gardenText({ year: 2027, plantings });
  return () => checkPlan({ ...SOURCE, text }, []);
}

/** Calculates the baseline days of so many plantings, as happens once when a plan is saved. */
export function baselineJob(plantings: number): () => unknown {
  const garden = readGarden(gardenText({ year: 2027, plantings }));
  return () => buildBaseline(garden);
}

/** The first rebuild of a garden: nothing of it was published before. */
export function firstRebuildJob(plantings: number): () => Rebuilt {
  const stored = storedGarden(plantings);
  return () => rebuild(stored, { now: NOW, choice: IMRE, published: NOTHING });
}

/** The rebuild that a tap or a new day causes: all was published before, and little or nothing changes. */
export function rebuildJob(plantings: number): () => Rebuilt {
  const stored = storedGarden(plantings);
  const published = rebuild(stored, { now: NOW, choice: IMRE, published: NOTHING });
  return () => rebuild(stored, { now: NOW, choice: IMRE, published });
}

/** All tasks of the household a month after they were published. */
export function monthLaterJob(plantings: number): () => unknown {
  const stored = storedGarden(plantings);
  const published = rebuild(stored, { now: NOW, choice: ALL, published: NOTHING });
  return () => rebuild(stored, { now: NOW + 31 * DAY_MS, choice: ALL, published });
}

/** One more feed of a garden whose events are stored: its body from those. */
export function anotherFeedJob(plantings: number): () => unknown {
  const { events } = rebuild(storedGarden(plantings), {
    now: NOW,
    choice: IMRE,
    published: NOTHING,
  });
  return () => writeFeed(JSON.parse(events), { now: NOW, choice: ALL, ledger: null });
}

/** Fits the tasks of ten gardens of so many plantings each to the people of one. */
export function placingJob(plantings: number): () => unknown {
  const garden: Garden = JSON.parse(storedGarden(plantings));
  const [plan] = garden.plans;
  const { scheduled } = buildSchedule(garden, horizonAt(garden, NOW), {});
  const tasks = Array.from({ length: 10 }, (_, copy) => copy).flatMap((copy) =>
    scheduled.map(({ task }) => ({ ...task, id: `${task.id}/${copy}` })),
  );
  return () =>
    scheduleTasks(tasks, {
      household: householdOf(plan?.people ?? [], plan?.away ?? []),
      publishedState: {},
      weatherAsOf: null,
      done: new Map(),
      baseline: {},
      doneBefore: new Map(),
      load: new Map(),
      days: new Map(),
    });
}

/** Throws where the text has a problem. */
function readGarden(text: string): Garden {
  const { plan, problems } = readPlan(text, SOURCE, PRACTICES);
  if (plan === null) throw new Error(JSON.stringify(problems));
  return { id: "bench", plans: [plan] };
}

/** A checked garden with its baseline, as both are stored when a plan is saved. */
function storedGarden(plantings: number): string {
  const garden = readGarden(gardenText({ year: 2027, plantings }));
  return JSON.stringify({ ...garden, baseline: buildBaseline(garden) });
}

type Rebuild = {
  readonly now: number;
  readonly choice: FeedChoice;
  readonly published: Published;
};

/** What a rebuild stores: a feed's body with its fingerprint, the events as JSON, and what was published. */
export type Rebuilt = ReturnType<typeof writeFeed> & {
  readonly publishedState: PublishedState;
  readonly events: string;
};

/** The whole of a rebuild, from the stored garden. */
function rebuild(stored: string, { now, choice, published }: Rebuild): Rebuilt {
  const garden: Garden = JSON.parse(stored);
  const { events, publishedState } = buildSchedule(
    garden,
    horizonAt(garden, now),
    published.publishedState,
  );
  const feed = writeFeed(events, { now, choice, ledger: published.ledger });
  return { ...feed, publishedState, events: JSON.stringify(events) };
}

type FeedInput = {
  readonly now: number;
  readonly choice: FeedChoice;
  readonly ledger: Ledger | null;
};

/** A feed's fingerprint, packed body and ledger, as they are stored. */
function writeFeed(events: readonly Event[], { now, choice, ledger: had }: FeedInput) {
  const { text, ledger } = writeCalendar({
    garden: "bench",
    name: "Bench",
    events: chooseEvents(events, choice),
    quiet: false,
    reader: false,
    link: (event) => `https://sowbell.example/bench/link/mac/event/${event.key}`,
    clock: "America/Denver",
    cause: now,
    now,
    ledger: had,
  });
  const fingerprint = createHash("sha256").update(text).digest("base64url");
  return { fingerprint, packed: zip(text), ledger };
}
