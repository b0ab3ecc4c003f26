import { createHash } from "node:crypto";
import { buildBaseline, buildSchedule, type Garden, horizonAt } from "../../src/app/feed.ts";
import { householdOf } from "../../src/engine/schedule/household.ts";
import { scheduleTasks } from "../../src/engine/schedule/schedule-tasks.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { pack } from "../../src/host/store/bytes.ts";
import { chooseEvents, type FeedChoice } from "../../src/views/calendar/choose-events.ts";
import type { Ledger } from "../../src/views/calendar/ledger.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import type { Event } from "../../src/views/events/event.ts";
import { medians } from "./clock.ts";

const NOW = Date.UTC(2027, 4, 1, 18);
const DAY_MS = 86_400_000;

const CROPS = [
  "potato, 12 plants, sprouted first",
  "carrot, 3 rows, under a board",
  "beet, 2 rows",
  "lettuce, 2 rows, every 14 days, 3 times",
  "tomato, 6 plants, from seed indoors",
  "garlic, 40 cloves, plant this October",
] as const;

/** Ten beds of six plantings: two people with hours, absences, normals and a diary. */
function gardenText(): string {
  const beds = Array.from({ length: 10 }, (_, bed) => {
    const crops = CROPS.map((phrase) => {
      const [crop = "", ...more] = phrase.split(", ");
      return `      - ${crop}: sort ${bed}, ${more.join(", ")}`;
    });
    return `  Bed ${bed}:\n    is: 24 x 4 ft\n    crops:\n${crops.join("\n")}`;
  });
  return `garden: Sixty
year: 2027
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  greenhouse: 200 trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
people:
  Imre: { gardens: Wed 17-20 and Sat 8-14, home: weekdays from 17:30 and weekends }
  Oda: { gardens: Tue 17-20 and Sun 9-14, home: every day but Tue }
away:
  - Oda, 19 to 23 Jun
  - everybody, 1 Aug to 7 Aug
beds:
${beds.join("\n")}
diary:
  - 20 Apr: soil in Bed 1 48 °F
`;
}

const SOURCE = { garden: "sixty", file: "plans/sixty/2027.yaml", beside: {} };

/** The checked plan with its usual days, as both are kept when it is saved. Throws where the text has a problem. */
function checkedPlan(): string {
  const { plan, problems } = readPlan(gardenText(), SOURCE);
  if (plan === null) throw new Error(JSON.stringify(problems));
  const garden = { id: "sixty", plans: [plan] };
  return JSON.stringify({ ...garden, usual: buildBaseline(garden) });
}

const IMRE: FeedChoice = {
  of: { person: "imre" },
  kind: "sessions",
  bed: null,
  quiet: false,
  reader: false,
};
const ALL: FeedChoice = { ...IMRE, of: "household", kind: "tasks" };

type Kept = { readonly standing: PublishedState; readonly ledger: Ledger | null };

/** One render as the worker does it: the checked plan's JSON in; the events as they are kept, and a feed's body, out. */
function render(checked: string, now: number, choice: FeedChoice, kept: Kept) {
  const garden: Garden = JSON.parse(checked);
  const told = buildSchedule(garden, horizonAt(garden, now), kept.standing);
  const events = JSON.stringify(told.events);
  return {
    ...written(told.events, now, choice, kept.ledger),
    standing: told.publishedState,
    events,
  };
}

/** Another feed of a garden already told: its kept events in, the feed's body out. */
function another(events: string, now: number, choice: FeedChoice) {
  return written(JSON.parse(events) as readonly Event[], now, choice, null);
}

/** A feed's text, its print and its body as they are stored. */
function written(events: readonly Event[], now: number, choice: FeedChoice, had: Ledger | null) {
  const { text, ledger } = writeCalendar({
    garden: "sixty",
    name: "Sixty",
    events: chooseEvents(events, choice),
    quiet: false,
    reader: false,
    link: (event) => `https://sowbell.example/sixty/link/mac/event/${event.key}`,
    cause: now,
    ledger: had,
  });
  const print = createHash("sha256").update(text).digest("base64url");
  return { text, print, packed: pack(text), ledger };
}

/** Ten gardens' worth of jobs, each garden's under its own ids, and the household that has to do them all. */
function manyJobs(checked: string): () => unknown {
  const garden: Garden = JSON.parse(checked);
  const [plan] = garden.plans;
  const { scheduled: placed } = buildSchedule(garden, horizonAt(garden, NOW), {});
  const tasks = Array.from({ length: 10 }, (_, i) => i).flatMap((i) =>
    placed.map(({ task }) => ({ ...task, id: `${task.id}/${i}` })),
  );
  return () =>
    scheduleTasks(tasks, {
      household: householdOf(plan?.people ?? [], plan?.away ?? []),
      publishedState: {},
      done: new Map(),
      baseline: {},
      doneBefore: new Map(),
      load: new Map(),
      days: new Map(),
    });
}

const NOTHING: Kept = { standing: {}, ledger: null };

/** Prices of whole renders [ms], and what they are prices of. */
export type Prices = {
  readonly plantings: number;
  readonly events: number;
  readonly same: boolean;
  readonly first: number;
  readonly reading: number;
  readonly usual: number;
  readonly fresh: number;
  readonly tasks: number;
  readonly again: number;
  readonly month: number;
  readonly placing: number;
};

async function prices(): Promise<Prices> {
  const checked = checkedPlan();
  await new Promise((resolve) => setTimeout(resolve, 0));
  const begun = performance.now();
  const first = render(checked, NOW, IMRE, NOTHING);
  const firstMs = performance.now() - begun;
  const all = render(checked, NOW, ALL, NOTHING);
  const { usual: _, ...unread } = JSON.parse(checked);
  const text = gardenText();
  const [reading = 0, usual = 0, fresh = 0, tasks = 0, again = 0, month = 0, placing = 0] =
    await medians([
      () => readPlan(text, SOURCE),
      () => buildBaseline(unread),
      () => render(checked, NOW, IMRE, NOTHING),
      () => another(first.events, NOW, ALL),
      () => render(checked, NOW, IMRE, first),
      () => render(checked, NOW + 31 * DAY_MS, ALL, all),
      manyJobs(checked),
    ]);
  return {
    plantings: JSON.parse(checked).plans[0].plantings.length,
    events: all.text.split("BEGIN:VEVENT").length - 1,
    same: render(checked, NOW, IMRE, first).text === first.text,
    first: firstMs,
    reading,
    usual,
    fresh,
    tasks,
    again,
    month,
    placing,
  };
}

/** A worker that answers with its prices: its first call stands in an isolate that has rendered nothing yet. */
export default { fetch: async () => Response.json(await prices()) };
