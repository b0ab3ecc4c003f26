import { env } from "cloudflare:workers";
import type { TaskCard } from "../../../src/app/answers.ts";
import type { PublishedTask, Year } from "../../../src/app/build.ts";
import type { PlanCheck, PlanText } from "../../../src/app/check.ts";
import { feedName, writeFeed } from "../../../src/app/feed.ts";
import { type Day, dayFromIso, isoOf, plus } from "../../../src/base/days/day.ts";
import type { Problem } from "../../../src/base/problems/problem.ts";
import type { DiaryLine, Plan } from "../../../src/garden/model/plan.ts";
import type { Engine } from "../../../src/host/edge/engine.ts";
import { settingsOf } from "../../../src/host/edge/settings.ts";
import { keyFrom, pathOf } from "../../../src/host/links/mac.ts";
import type { Link, Role } from "../../../src/host/links/segment.ts";
import { answerRequest } from "../../../src/host/web/app.ts";
import type { AppContext, GardenStub } from "../../../src/host/web/app-context.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { settled } from "../in-store.ts";
import { ports } from "../ports.ts";

export { inStore, settled } from "../in-store.ts";

/**
 * A garden small enough to see through: a plan of plain lines, each job told on its own day in both sets. The
 * calendar is the real one.
 */
export const PLAN = `name Quarry Lane
year 2027
person Imre
person Oda
bed South bed
2027-05-08 Thin beets for imre in south-bed
2027-05-09 Hill potatoes for oda in south-bed
2027-05-20 Cover squash for imre in south-bed
`;

export const ORIGIN = "https://garden.example";
export const SECRET = "a secret for tests, of more than 32 characters";
/** 7 May 2027, 06:00 UTC. */
export const MORNING = Date.UTC(2027, 4, 7, 6);

const MS_PER_DAY = 86_400_000;

function slug(name: string): string {
  return name.toLowerCase().replaceAll(" ", "-");
}

function named(text: string, word: string): readonly string[] {
  return text
    .split("\n")
    .filter((line) => line.startsWith(`${word} `))
    .map((line) => line.slice(word.length + 1));
}

function checkPlan({ text, ...at }: PlanText): PlanCheck {
  const problems = text.split("\n").flatMap((line, index): readonly Problem[] => {
    const weight = line.startsWith("wrong") ? "problem" : "doubt";
    if (!line.startsWith("wrong") && !line.startsWith("doubt")) return [];
    const place = { file: at.file, line: index + 1, column: 1 };
    return [{ code: "test", weight, at: place, is: line, shouldBe: "something else" }];
  });
  const stopped = problems.some(({ weight }) => weight === "problem");
  return { plan: stopped ? null : planOf(text, at), problems };
}

function planOf(text: string, { garden, file }: Omit<PlanText, "text">): Plan {
  const diary = text.split("\n").flatMap((line, index): readonly DiaryLine[] => {
    const day = dayFromIso(line.slice(0, 10));
    const at = { file, line: index + 1, column: 1 };
    return day === null ? [] : [{ day, text: line.slice(11), at }];
  });
  return {
    garden,
    file,
    name: named(text, "name")[0] ?? garden,
    year: Number(named(text, "year")[0]),
    measures: "metric",
    site: { clock: "UTC" },
    people: named(text, "person").map((name) => ({ key: slug(name), name })),
    beds: named(text, "bed").map((name) => ({ key: slug(name), name })),
    diary,
  } as unknown as Plan;
}

function eventsOf({ day, text }: DiaryLine): readonly Event[] {
  const found = /^(.*?)(?: for (\S+))?(?: in (\S+))?$/.exec(text);
  const title = found?.[1] ?? text;
  const id = `2027/${slug(title)}/do/1`;
  const task: Event = {
    key: id,
    set: "tasks",
    kind: "task",
    tasks: [id],
    people: found?.[2] ? [found[2]] : [],
    beds: found?.[3] ? [found[3]] : [],
    title,
    text: `${title}. The household reads this.`,
    readerText: `${title}. Anybody reads this.`,
    day,
    categories: [],
    when: { kind: "all day", day },
    busy: false,
    remindMinutesBefore: 360,
    weight: 10,
  };
  const from = day * MS_PER_DAY + 9 * 3_600_000;
  const visit = { kind: "timed", from, to: from + 3_600_000 } as const;
  const key = `${found?.[2] ?? "all"}/${isoOf(day)}`;
  return [task, { ...task, key, set: "sessions", kind: "session", when: visit, busy: true }];
}

/** The card of a job's own event; nothing is offered to answer. */
function cardOf({ key, title, text, people, day }: Event): TaskCard {
  return {
    ...{ id: key, title, fullTitle: title, text, people, needs: [], minutes: null },
    ...{ bedRank: 0, bed: "" },
    ...{ day, earliest: day, latest: day, why: [], answers: [], done: null },
  };
}

/** Still open work on a day, in every feed, and the season's own line. */
function alwaysOn(day: Day): readonly Event[] {
  const rest = {
    tasks: [],
    people: [],
    beds: [],
    categories: [],
    remindMinutesBefore: 360,
    weight: 10,
  };
  const text = "Whatever is still open.";
  const said = { title: "Still open", text, readerText: text, busy: false };
  const open: Event = {
    key: "all/open",
    set: "both",
    kind: "open",
    day,
    when: { kind: "all day", day },
    ...rest,
    ...said,
  };
  const season: Event = { ...open, key: "2027/season", kind: "season", title: "Season" };
  return [open, season];
}

/** A year of those plans in which nothing is scheduled. */
function yearOf(plans: readonly Plan[]): Year {
  const seasons = plans.map(({ year }) => ({
    year,
    climate: {},
    plantings: [],
    wateringWeeks: [],
  }));
  const rest = {
    garden: "",
    horizon: {},
    observations: [],
    baseline: {},
    published: {},
    scheduled: [],
  };
  return { ...rest, plans, seasons } as unknown as Year;
}

const unused = () => {
  throw new Error("no page of these tests asks for it");
};

/** The fake engine; its "still open" stands on the day after today, so that the turn of the day shows. */
export const engine: Engine = {
  checkPlan,
  readPlan: (file) => checkPlan(file).plan,
  build: ({ plans, instant }) => {
    const today = Math.floor(instant / MS_PER_DAY) as Day;
    const lines = plans.flatMap((plan) => plan.diary).filter(({ at }) => at.file !== "diary");
    const told = lines.flatMap(eventsOf);
    const cards = told.filter(({ set }) => set === "tasks").map(cardOf);
    const events = [...told, ...alwaysOn(plus(today, 1))];
    const published = { day: today } as unknown as PublishedTask;
    const ids = events.flatMap(({ tasks }) => tasks);
    const publishedState = Object.fromEntries(ids.map((id) => [id, published]));
    const until = (today + 1) * MS_PER_DAY;
    return { events, publishedState, cards, year: yearOf(plans), diary: [], until };
  },
  feedName,
  writeFeed,
  ...{ readWeather: unused, mergeWeather: unused, readYears: unused },
  ...{ yearsWanted: () => null, yearsFile: "years.yaml" },
  ...{ bedsPlanned: unused, bedsWithRoom: () => null, bedsInFrost: unused, frostInShort: unused },
  ...{ frost: unused, room: unused, draw: unused, month: unused, review: unused },
  ...{ checkFirstPlan: unused, guessedFrosts: unused, sampleMonth: unused },
  ...{ drawYear: unused, courseOf: unused },
  nextYear: (text, year) => text.replace(/year \d+/, `year ${year}`),
  cropNames: unused,
};

/** What a test's requests work with: the clock, the engine, the deployment's settings, and the gardens' objects. */
export type Shell = {
  readonly now: () => number;
  readonly engine: Engine;
  readonly code: string;
  readonly epoch: string;
  readonly origin: string | null;
  readonly unauthorized: RateLimiter | null;
  readonly gardenOf: (garden: string) => GardenStub;
};

const NOON: Shell = {
  ...{ now: () => MORNING, engine, code: "code 1", epoch: "0", origin: null, unauthorized: null },
  gardenOf: (garden) => env.GARDENS.getByName(garden),
};

/** A shell at seven in the morning with the fake engine; what is given stands instead. */
export function shellWith(over: Partial<Shell> = {}): Shell {
  return { ...NOON, ...over };
}

/** The path of a link of a garden. */
export async function linkTo(garden: string, role: Role, person: string | null = null, serial = 1) {
  const link: Link = { garden, role, person, serial };
  return pathOf(link, await keyFrom(SECRET));
}

/** Makes every object work as a shell says, till another does. */
export function use({ now, engine, code, epoch, origin }: Shell): void {
  Object.assign(ports, { now, engine: async () => engine });
  ports.settings = () => ({ code, epoch, origin, contact: null });
}

/** Objects work as they are deployed again. */
export function useReal(): void {
  ports.settings = settingsOf;
}

/** Asks for a path, waits for the work behind the answer, and gives the answer. */
export async function ask(shell: Shell, path: string, init: RequestInit = {}): Promise<Response> {
  use(shell);
  const url = path.startsWith("/") ? `${ORIGIN}${path}` : path;
  const asked = new Set<string>();
  const gardenOf = (garden: string) => {
    asked.add(garden);
    return shell.gardenOf(garden);
  };
  const { unauthorized, origin } = shell;
  const key = await keyFrom(SECRET);
  const context: AppContext = { gardenOf, unauthorized, origin, key, epoch: "0" };
  const request = new Request(url, { redirect: "manual", ...init });
  const answer = await answerRequest(request, context);
  for (const garden of asked) if (shell.gardenOf === NOON.gardenOf) await settled(garden);
  return answer;
}

/** Publishes a plan with the deployment's key over version `base`. */
export async function publish(shell: Shell, garden: string, text = PLAN, base = 0) {
  const path = `${await linkTo(garden, "admin")}plans/2027`;
  return ask(shell, path, put({ text, file: `plans/${garden}/2027.yaml` }, base));
}

/** A PUT of a plan, started from version `base` (0: from none, null: it doesn't say). */
export function put(body: unknown, base: number | null): RequestInit {
  const from: Record<string, string> =
    base === null ? {} : base === 0 ? { "if-none-match": "*" } : { "if-match": `"${base}"` };
  const text = typeof body === "string" ? body : JSON.stringify(body);
  return { method: "PUT", body: text, headers: from };
}

/** Gardens whose objects are down. */
export const DOWN = (): GardenStub => ({
  poll: () => Promise.reject(new Error("the object is down")),
  visit: () => Promise.reject(new Error("the object is down")),
  recover: () => Promise.reject(new Error("the object is down")),
});
