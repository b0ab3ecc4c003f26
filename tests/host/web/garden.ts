import { createExecutionContext, waitOnExecutionContext } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { type Day, dayFromIso, dayOrThrow, isoOf, plus } from "../../../src/base/days/day.ts";
import type { Problem } from "../../../src/base/problems/problem.ts";
import type { PublishedState } from "../../../src/engine/schedule/scheduled-task.ts";
import type { Year } from "../../../src/engine/year.ts";
import type { DiaryLine, Plan } from "../../../src/garden/model/plan.ts";
import { keyFrom, pathOf } from "../../../src/host/links/mac.ts";
import type { Link, Role } from "../../../src/host/links/segment.ts";
import { app } from "../../../src/host/web/app.ts";
import type { AppContext, Core, PlanAt } from "../../../src/host/web/app-context.ts";
import { chooseEvents } from "../../../src/views/calendar/choose-events.ts";
import { writeCalendar } from "../../../src/views/calendar/write.ts";
import type { Event } from "../../../src/views/events/event.ts";

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

function readPlan(text: string, at: PlanAt): ReturnType<Core["readPlan"]> {
  const problems = text.split("\n").flatMap((line, index): readonly Problem[] => {
    const weight = line.startsWith("wrong") ? "problem" : "doubt";
    if (!line.startsWith("wrong") && !line.startsWith("doubt")) return [];
    const place = { file: at.file, line: index + 1, column: 1 };
    return [{ code: "test", weight, at: place, is: line, shouldBe: "something else" }];
  });
  const stopped = problems.some(({ weight }) => weight === "problem");
  return { plan: stopped ? null : planOf(text, at), problems };
}

function planOf(text: string, { garden, file }: PlanAt): Plan {
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
  };
  const from = day * MS_PER_DAY + 9 * 3_600_000;
  const visit = { kind: "timed", from, to: from + 3_600_000 } as const;
  const key = `${found?.[2] ?? "all"}/${isoOf(day)}`;
  return [task, { ...task, key, set: "sessions", kind: "session", when: visit, busy: true }];
}

/** Still open work on a day, in every feed, and the season's own line. */
function alwaysOn(day: Day): readonly Event[] {
  const rest = { tasks: [], people: [], beds: [], categories: [], remindMinutesBefore: 360 };
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

/** The fake core; its "still open" stands on the day after the horizon's own, so that a horizon passed shows. */
export const core: Core = {
  readPlan,
  choose: chooseEvents,
  writeCalendar,
  usualOf: () => ({}),
  horizonAt: (_, instant) => {
    const today = Math.floor(instant / MS_PER_DAY) as Day;
    const openDays = { "": plus(today, 1) };
    return { firstDay: dayOrThrow(2027, 1, 1), openDays, until: (today + 1) * MS_PER_DAY };
  },
  tell: (garden, horizon, standing) => {
    const lines = garden.plans.flatMap((plan) => plan.diary);
    const open = horizon.openDays[""] ?? horizon.firstDay;
    const told = lines.map(({ day, text }) => {
      return [text, standing[text] ?? ({ day } as unknown as PublishedState[string])] as const;
    });
    const events = [...lines.flatMap(eventsOf), ...alwaysOn(open)];
    // Every task told is remembered, as the real core does, beside the lines it was made from.
    const ids = events.flatMap(({ tasks }) => tasks.map((id) => [id, {}] as const));
    const kept = Object.fromEntries([...ids, ...told]) as PublishedState;
    const year = { ...garden, horizon, scheduled: [] } as unknown as Year;
    return { year, scheduled: [], events, publishedState: kept };
  },
};

/** A shell around the test's own store and clock. */
export async function shellWith(over: Partial<AppContext> = {}): Promise<AppContext> {
  const limits = { writes: null, unauthorized: null };
  const rest = {
    code: "code 1",
    epoch: "0",
    origin: null,
    databases: new Map(),
    limits,
    gardensARun: 3,
    memory: null,
  };
  return { db: env.DB, key: await keyFrom(SECRET), core, now: () => MORNING, ...rest, ...over };
}

/** The path of a link of a garden. */
export async function linkTo(garden: string, role: Role, person: string | null = null, serial = 1) {
  const link: Link = { garden, role, person, serial };
  return pathOf(link, await keyFrom(SECRET));
}

/** Asks for a path, waits for the work behind the answer, and gives the answer. */
export async function ask(
  shell: AppContext,
  path: string,
  init: RequestInit = {},
): Promise<Response> {
  const context = createExecutionContext();
  const url = path.startsWith("/") ? `${ORIGIN}${path}` : path;
  const databases = shell.databases.size > 0 ? shell.databases : new Map([[1, shell.db]]);
  const request = new Request(url, { redirect: "manual", ...init });
  const answer = await app.fetch(request, { ...shell, databases }, context);
  await waitOnExecutionContext(context);
  return answer;
}

/** Publishes a plan with the deployment's key over version `base`. */
export async function publish(shell: AppContext, garden: string, text = PLAN, base = 0) {
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

/** The store, with its queries counted; a batch counts each of its statements. */
export function counted(db: D1Database): { readonly db: D1Database; readonly count: () => number } {
  let count = 0;
  const wrap = (statement: D1PreparedStatement): D1PreparedStatement => ({
    bind: (...values) => wrap(statement.bind(...values)),
    first: () => counting(() => statement.first()),
    run: () => counting(() => statement.run()),
    all: () => counting(() => statement.all()),
  });
  const counting = <Result>(run: () => Promise<Result>): Promise<Result> => {
    count += 1;
    return run();
  };
  const batch: D1Database["batch"] = () => Promise.reject(new Error("not in a poll"));
  return { db: { prepare: (query) => wrap(db.prepare(query)), batch }, count: () => count };
}

/** A store that is down. */
export const DOWN: D1Database = {
  prepare: () => {
    throw new Error("the store is down");
  },
  batch: () => Promise.reject(new Error("the store is down")),
};
