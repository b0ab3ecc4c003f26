import { existsSync, readFileSync } from "node:fs";
import {
  buildSchedule,
  buildYear,
  type Garden,
  horizonAt,
  newestPlan,
  type Plan,
  type PublishedState,
  type Schedule,
  sayProblem,
  todayIn,
  type Year,
} from "../../app/index.ts";
import { type Day, dayFromIso, startOf } from "../../base/index.ts";
import { type DaysFile, fileSource } from "../weather/file-source.ts";
import { readFiles } from "./files.ts";

/** Where a run of the command line writes, and what it reaches the world by: the clock [ms since 1970 UTC] and the network. */
export type Terminal = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly now: () => number;
  readonly fetch: (url: string, init?: RequestInit) => Promise<Response>;
};

/** 0: done, doubts too; 1: the plan has problems, or what was asked for is not there; 2: wrong usage. */
export type Exit = 0 | 1 | 2;

/** The options of all commands, as node's own parser takes them. */
export const OPTIONS = {
  json: { type: "boolean" },
  quiet: { type: "boolean" },
  on: { type: "string" },
  since: { type: "string" },
  for: { type: "string" },
  kind: { type: "string" },
  bed: { type: "string" },
  ledger: { type: "string" },
  server: { type: "string" },
  of: { type: "string" },
  year: { type: "string" },
  month: { type: "string" },
  to: { type: "string" },
  low: { type: "string" },
  high: { type: "string" },
  rain: { type: "string" },
  date: { type: "string" },
  where: { type: "string", multiple: true },
  in: { type: "string" },
  latitude: { type: "string" },
  at: { type: "string" },
  weather: { type: "string" },
  contact: { type: "string" },
  over: { type: "boolean" },
  as: { type: "string" },
  help: { type: "boolean" },
} as const;

/** What was said for each option; absent where nothing was. */
export type Options = {
  readonly [K in keyof typeof OPTIONS]?: (typeof OPTIONS)[K] extends { readonly multiple: true }
    ? readonly string[]
    : (typeof OPTIONS)[K]["type"] extends "boolean"
      ? boolean
      : string;
};

/** What a command was called with; `rest` are the words after its name. */
export type Call = {
  readonly rest: readonly string[];
  readonly options: Options;
  readonly terminal: Terminal;
};

/** One verb of the command line, with the options it takes. */
export type Command = {
  readonly takes: readonly (keyof Options)[];
  readonly run: (call: Call) => Exit | Promise<Exit>;
};

/** A mistake in how a command was called; told with the usage, exit 2. */
export class WrongUsage extends Error {}

/** The garden read whole, and of it the plans that were asked for; at least one of each. */
export type LoadedGarden = {
  readonly garden: Garden;
  readonly requestedPlans: readonly [Plan, ...Plan[]];
  readonly newest: Plan;
};

/** The garden of a plan's file or folder, its problems and doubts told on standard error; null where there are problems. */
export function load({ rest, terminal }: Call): LoadedGarden | null {
  const [path] = rest;
  if (path === undefined) throw new WrongUsage("which plan?");
  const { garden, requested, problems } = readFiles(path);
  for (const problem of problems) terminal.err(`${sayProblem(problem)}\n`);
  const [first, ...others] = requested;
  if (!garden || !first) return null;
  return { garden, requestedPlans: [first, ...others], newest: newestPlan(garden.plans) };
}

/** Throws a wrong usage where more words were given than a command takes. */
export function rejectExtraWords(most: number, { rest }: Call): void {
  if (rest.length > most) throw new WrongUsage(`what is ${rest[most] ?? ""}?`);
}

/** The day the caller says is today, or the clock's in the garden's zone, and its instant [ms since 1970 UTC]. */
export function today(
  { options, terminal }: Call,
  { garden, newest }: LoadedGarden,
): { readonly day: Day; readonly instant: number } {
  if (options.on === undefined) {
    const instant = terminal.now();
    return { day: todayIn(garden, instant), instant };
  }
  const day = dayFromIso(options.on);
  if (day === null) throw new WrongUsage(`--on ${options.on}: a day like 2027-05-08`);
  return { day, instant: startOf(day, newest.site.clock) };
}

/** The garden's feeds as of that day, after what was published before. */
export function buildScheduleOn(
  call: Call,
  loaded: LoadedGarden,
  published: PublishedState,
): Schedule {
  const garden = withWeather(call, loaded);
  return buildSchedule(garden, horizonAt(garden, today(call, loaded).instant), published);
}

/** The garden's year as of that day, nothing published before. */
export function yearOn(call: Call, loaded: LoadedGarden): Year {
  const garden = withWeather(call, loaded);
  return buildYear(garden, horizonAt(garden, today(call, loaded).instant), {});
}

/** The garden with the weather of `--weather FILE`, as of that day; throws a wrong usage where the file can't be read. */
function withWeather(call: Call, loaded: LoadedGarden): Garden {
  const file = call.options.weather;
  if (file === undefined) return loaded.garden;
  if (!existsSync(file)) throw new WrongUsage(`--weather ${file}: there is no such file`);
  const { day } = today(call, loaded);
  const answer = fileSource(daysFile(file)).seasonSoFar({ today: day });
  if (answer.kind !== "good") throw new WrongUsage(answer.kind === "failed" ? answer.fault : file);
  return { ...loaded.garden, weather: answer.value };
}

/** A file of days that a caller names, to be read as it comes. */
function daysFile(file: string): DaysFile {
  const request = { file, columns: {}, where: [], unit: null };
  return { text: readFileSync(file, "utf8"), request, name: file, latitude: null };
}

/** Whatever bears a name or key, whatever its case. */
export function findByName<T extends { readonly key: string; readonly name: string }>(
  all: readonly T[],
  name: string,
): T | undefined {
  const low = name.toLowerCase();
  return all.find((each) => each.key === low || each.name.toLowerCase() === low);
}

/** Key of the person whom `--for` names, in any of the plans; throws a wrong usage where they name nobody so. */
export function personNamed(name: string, plans: readonly Plan[]): string {
  const people = plans.flatMap((plan) => plan.people);
  const person = findByName(people, name);
  if (!person) throw new WrongUsage(`--for ${name}: the plan names no such person`);
  return person.key;
}
