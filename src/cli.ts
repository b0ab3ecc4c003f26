import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { choose, type FeedChoice } from "./calendar/choose.ts";
import type { Ledger } from "./calendar/ledger.ts";
import { writeCalendar } from "./calendar/write.ts";
import { type Day, dayFromIso, isoOf, sayDay, WEEKDAYS, weekdayOf } from "./days/day.ts";
import { dayAt, isoWithOffset, startOf } from "./days/instants.ts";
import { type Garden, horizonAt, tell } from "./feed.ts";
import { readGarden } from "./files.ts";
import type { Plan } from "./plan/plan.ts";
import { sayProblem } from "./problems/problem.ts";
import type { Placed, Standing } from "./schedule/placed.ts";
import { sayPart, sayPieces, voiceOf } from "./words/sentences.ts";
import { textOf } from "./words/texts.ts";
import { titleOf } from "./words/titles.ts";

/** Where a run of the command line writes, and the clock it reads: now in ms since 1970 UTC. */
export type Terminal = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly now: () => number;
};

/** 0: done, doubts too; 1: the plan has problems, or what was asked for is not there; 2: wrong usage. */
export type Exit = 0 | 1 | 2;

const USAGE = `sowbell check PLAN
sowbell tasks PLAN [--json] [--on DAY]
sowbell feed PLAN [--for PERSON|household] [--kind sessions|tasks|warnings] [--bed BED]
             [--quiet] [--on DAY] [--ledger FILE]
sowbell why PLAN TASK [--on DAY]
sowbell links [--server URL]
sowbell publish FOLDER [--server URL]

PLAN is a year's file or a garden's folder. DAY is a date like 2027-05-08; today is that day.
`;

const OPTIONS = {
  json: { type: "boolean" },
  quiet: { type: "boolean" },
  on: { type: "string" },
  for: { type: "string" },
  kind: { type: "string" },
  bed: { type: "string" },
  ledger: { type: "string" },
  server: { type: "string" },
  help: { type: "boolean" },
} as const;

type Options = {
  readonly [K in keyof typeof OPTIONS]?: (typeof OPTIONS)[K]["type"] extends "boolean"
    ? boolean
    : string;
};

/** What a command was called with; `rest` are the words after its name. */
type Call = {
  readonly rest: readonly string[];
  readonly options: Options;
  readonly terminal: Terminal;
};

/** A mistake in how the command was called; told with the usage, exit 2. */
class WrongUsage extends Error {}

const COMMANDS: Readonly<
  Record<
    string,
    {
      readonly takes: readonly (keyof Options)[];
      readonly run: (call: Call) => Exit | Promise<Exit>;
    }
  >
> = {
  check: { takes: [], run: check },
  tasks: { takes: ["json", "on"], run: tasks },
  feed: { takes: ["for", "kind", "bed", "quiet", "on", "ledger"], run: feed },
  why: { takes: ["on"], run: why },
};

/** Runs one command. `args` are the words behind `sowbell`. */
export async function run(args: readonly string[], terminal: Terminal): Promise<Exit> {
  try {
    const { positionals, values } = parseArgs({
      args: [...args],
      options: OPTIONS,
      allowPositionals: true,
    });
    if (values.help) {
      terminal.out(USAGE);
      return 0;
    }
    const [name, ...rest] = positionals;
    const command = COMMANDS[name ?? ""];
    if (!command)
      throw new WrongUsage(name === undefined ? "which command?" : `there is no command ${name}`);
    const odd = Object.keys(values).find(
      (option) => !command.takes.includes(option as keyof Options),
    );
    if (odd) throw new WrongUsage(`${name} takes no --${odd}`);
    return await command.run({ rest, options: values, terminal });
  } catch (error) {
    const parsing =
      error instanceof TypeError &&
      "code" in error &&
      String(error.code).startsWith("ERR_PARSE_ARGS");
    if (!(error instanceof WrongUsage) && !parsing) throw error;
    terminal.err(`sowbell: ${error.message}\n\n${USAGE}`);
    return 2;
  }
}

type Loaded = { readonly garden: Garden; readonly asked: readonly Plan[] };

/** The garden of a plan's file or folder, its problems and doubts told; null where there are problems. */
function load({ rest, terminal }: Call): Loaded | null {
  const [path] = rest;
  if (path === undefined) throw new WrongUsage("which plan?");
  const read = readGarden(path);
  for (const problem of read.problems) terminal.err(`${sayProblem(problem)}\n`);
  return read.garden && read.asked.length > 0 ? { garden: read.garden, asked: read.asked } : null;
}

function extra({ rest }: Call, most: number): void {
  if (rest.length > most) throw new WrongUsage(`one plan at a time; what is ${rest[most] ?? ""}?`);
}

function check(call: Call): Exit {
  extra(call, 1);
  const loaded = load(call);
  if (!loaded) return 1;
  for (const plan of loaded.asked) {
    call.terminal.out(
      `${plan.file}: ${plan.plantings.length} plantings in ${plan.beds.length} beds, no problem.\n`,
    );
    for (const { what, value, why } of plan.filled)
      call.terminal.out(`  ${what}: ${value} (${why})\n`);
  }
  return 0;
}

/** The day the caller says is today, or the clock's in the garden's zone, and its instant. */
function today(
  { options, terminal }: Call,
  { garden }: Loaded,
): { readonly day: Day; readonly instant: number } {
  const clock = garden.plans[garden.plans.length - 1]?.site.clock ?? "UTC";
  if (options.on === undefined)
    return { day: dayAt(terminal.now(), clock), instant: terminal.now() };
  const day = dayFromIso(options.on);
  if (day === null) throw new WrongUsage(`--on ${options.on}: a day like 2027-05-08`);
  return { day, instant: startOf(day, clock) };
}

function tellOn(call: Call, loaded: Loaded, standing: Standing) {
  const on = today(call, loaded);
  return { ...tell(loaded.garden, horizonAt(loaded.garden, on.instant), standing), on };
}

const byDay = (a: Placed, b: Placed) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1);

function tasks(call: Call): Exit {
  extra(call, 1);
  const loaded = load(call);
  if (!loaded) return 1;
  const { placed, on } = tellOn(call, loaded, {});
  const years = loaded.asked.map((plan) => `${plan.year}/`);
  const mine = placed
    .filter(({ task }) => years.some((year) => task.id.startsWith(year)))
    .sort(byDay);
  const planOf = (each: Placed) =>
    loaded.asked.find((plan) => each.task.id.startsWith(`${plan.year}/`)) ??
    (loaded.asked[0] as Plan);
  if (call.options.json) {
    call.terminal.out(
      `${JSON.stringify(
        mine.map((each) => asJson(each, planOf(each))),
        null,
        2,
      )}\n`,
    );
    return 0;
  }
  for (const each of mine.filter(({ day }) => day >= on.day)) {
    const plan = planOf(each);
    const who = each.people.map(voiceOf(plan, "household").nameOf).join(", ");
    const weekday = (WEEKDAYS[weekdayOf(each.day) - 1] ?? "").slice(0, 3);
    call.terminal.out(
      `${weekday} ${sayDay(each.day, true).padEnd(12)} ${titleOf([each], plan)}${who === "" ? "" : ` (${who})`}  ${each.task.id}\n`,
    );
  }
  return 0;
}

/** One task as `tasks --json` gives it: days ISO, hours local with their offset. */
function asJson(placed: Placed, plan: Plan): Record<string, unknown> {
  const { task, window, at, day } = placed;
  const voice = voiceOf(plan, "household");
  return {
    id: task.id,
    subject: task.subject.kind,
    planting: task.subject.kind === "planting" ? task.subject.key : null,
    crop: task.crop,
    bed: task.bed,
    practice: task.practice,
    step: task.step,
    title: titleOf([placed], plan),
    text: textOf(placed, voice),
    why: sayPart(task.say, "why", voice),
    harm: task.harm,
    rhythm: task.rhythm,
    certainty: task.certainty,
    earliest: isoOf(window.earliest),
    due: isoOf(window.due),
    latest: isoOf(window.latest),
    usual: placed.usual === null ? null : isoOf(placed.usual),
    day: isoOf(day),
    people: placed.people.map(voice.nameOf),
    minutes: task.minutes,
    starts: at ? isoWithOffset(day, at.from, plan.site.clock) : null,
    ends: at ? isoWithOffset(day, at.to, plan.site.clock) : null,
  };
}

type Kept = { readonly ledger: Ledger | null; readonly standing: Standing };

function readKept(file: string | undefined): Kept {
  if (file === undefined) return { ledger: null, standing: {} };
  try {
    return JSON.parse(readFileSync(file, "utf8")) as Kept;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT")
      return { ledger: null, standing: {} };
    throw new WrongUsage(
      `--ledger ${file} is not a ledger of ours: ${error instanceof Error ? error.message : error}`,
    );
  }
}

/** Written beside and moved into place, so that a broken run never leaves half a ledger. */
function writeKept(file: string, kept: Kept): void {
  writeFileSync(`${file}.new`, JSON.stringify(kept));
  renameSync(`${file}.new`, file);
}

function feed(call: Call): Exit {
  extra(call, 1);
  const loaded = load(call);
  if (!loaded) return 1;
  const { options, terminal } = call;
  const plan = loaded.garden.plans[loaded.garden.plans.length - 1] as Plan;
  const choice = choiceOf(options, loaded.garden.plans);
  const kept = readKept(options.ledger);
  const told = tellOn(call, loaded, kept.standing);
  const written = writeCalendar({
    garden: loaded.garden.id,
    name: nameOf(plan, choice),
    events: choose(told.events, choice),
    quiet: choice.quiet,
    reader: false,
    link: null,
    cause: told.on.instant,
    ledger: kept.ledger,
  });
  terminal.out(written.text);
  if (options.ledger !== undefined)
    writeKept(options.ledger, { ledger: written.ledger, standing: told.standing });
  else
    terminal.err(
      "This file is for a single import: without --ledger a calendar cannot tell later changes.\n",
    );
  return 0;
}

function nameOf(plan: Plan, choice: FeedChoice): string {
  const key = choice.of === "household" ? null : choice.of.person;
  const person = plan.people.find((each) => each.key === key)?.name;
  return person === undefined ? plan.name : `${plan.name}: ${person}`;
}

function choiceOf(options: Options, plans: readonly Plan[]): FeedChoice {
  const kinds = ["sessions", "tasks", "warnings"] as const;
  const kind = kinds.find((each) => each === (options.kind ?? "sessions"));
  if (!kind) throw new WrongUsage(`--kind ${options.kind}: sessions, tasks or warnings`);
  const whose = options.for ?? "household";
  const person = named(
    plans.flatMap((plan) => plan.people),
    whose,
  );
  if (whose !== "household" && !person)
    throw new WrongUsage(`--for ${whose}: the plan names no such person`);
  const bed =
    options.bed === undefined
      ? null
      : named(
          plans.flatMap((plan) => plan.beds),
          options.bed,
        );
  if (bed === undefined) throw new WrongUsage(`--bed ${options.bed}: the plan has no such bed`);
  return {
    of: person ? { person: person.key } : "household",
    kind,
    bed: bed?.key ?? null,
    quiet: options.quiet ?? false,
    reader: false,
  };
}

/** Whatever bears a name or key, whatever its case. */
function named<T extends { readonly key: string; readonly name: string }>(
  all: readonly T[],
  name: string,
): T | undefined {
  const low = name.toLowerCase();
  return all.find((each) => each.key === low || each.name.toLowerCase() === low);
}

function why(call: Call): Exit {
  extra(call, 2);
  const id = call.rest[1];
  if (id === undefined)
    throw new WrongUsage("why which task? `sowbell tasks PLAN` lists their ids");
  const loaded = load(call);
  if (!loaded) return 1;
  const { placed } = tellOn(call, loaded, {});
  const found =
    placed.find(({ task }) => task.id === id) ??
    placed.find(({ task }) => task.id.endsWith(`/${id}`));
  if (!found) {
    call.terminal.err(`sowbell: no task ${id}; \`sowbell tasks PLAN\` lists their ids\n`);
    return 1;
  }
  for (const line of chain(found, placed, loaded, new Set())) call.terminal.out(`${line}\n`);
  return 0;
}

/** A task's own reasons, then those of each task it hangs on, each once. */
function chain(
  each: Placed,
  placed: readonly Placed[],
  loaded: Loaded,
  told: Set<string>,
): readonly string[] {
  told.add(each.task.id);
  const plan =
    loaded.garden.plans.find(({ year }) => each.task.id.startsWith(`${year}/`)) ??
    (loaded.asked[0] as Plan);
  const voice = voiceOf(plan, "household");
  const { earliest, due, latest } = each.window;
  const note = each.note ? [`  ${sayPieces(each.note.pieces, voice)}`] : [];
  const own = [
    `${titleOf([each], plan)}: ${sayDay(each.day, true)}  ${each.task.id}`,
    `  Between ${sayDay(earliest)} and ${sayDay(latest)}, best ${sayDay(due)}${each.usual !== null && each.usual !== due ? `; in a usual year ${sayDay(each.usual)}` : ""}.`,
    ...each.task.because.map((pieces) => `  ${sayPieces(pieces, voice)}`),
    ...note,
  ];
  const behind = placed.filter(
    ({ task }) => each.task.hangsOn.includes(task.id) && !told.has(task.id),
  );
  return [...own, ...behind.flatMap((next) => chain(next, placed, loaded, told))];
}

if (import.meta.url === `file://${process.argv[1]}`) {
  process.exitCode = await run(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    now: Date.now,
  });
}
