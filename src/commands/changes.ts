import { type Day, dayFromIso, sayDay } from "../days/day.ts";
import { startOf } from "../days/instants.ts";
import { lineByLine, type UnderstoodLine } from "../diary/understand.ts";
import { horizonAt, tell } from "../feed.ts";
import type { Plan } from "../plan/plan.ts";
import type { Placed } from "../schedule/placed.ts";
import { planOfTask } from "../schedule/year-of.ts";
import { titleOf } from "../words/titles.ts";
import {
  atMost,
  type Call,
  type Command,
  type Exit,
  type Loaded,
  load,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const since = sinceOf(call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day } = today(call, loaded);
  if (since > day) throw new WrongUsage("--since must not lie after today");
  const { garden, newest } = loaded;
  const at = (when: Day, until: Day, standing = {}) => {
    const then = { ...garden, plans: garden.plans.map((plan) => upTo(plan, until)) };
    return tell(then, horizonAt(then, startOf(when, newest.site.clock)), standing);
  };
  const before = at(since, (since - 1) as Day);
  const now = at(day, day, before.standing);
  const lines = changesOf(
    { before: before.placed, now: now.placed, said: saidIn(loaded, since, day), since },
    loaded,
  );
  for (const line of lines) call.terminal.out(`${line}\n`);
  if (lines.length === 0) call.terminal.out(`Nothing has moved since ${sayDay(since)}.\n`);
  return 0;
}

function sinceOf({ options }: Call): Day {
  const day = options.since === undefined ? null : dayFromIso(options.since);
  if (day === null) throw new WrongUsage("--since which day? Like 2027-05-08");
  return day;
}

/** The plan with its diary up to a day, that day with it. */
const upTo = (plan: Plan, day: Day): Plan => ({
  ...plan,
  diary: plan.diary.filter((line) => line.day <= day),
});

/** Lines written in those days, both inclusive. */
function saidIn({ garden: { plans } }: Loaded, from: Day, to: Day): readonly UnderstoodLine[] {
  return lineByLine(plans).filter(({ line: { day } }) => day >= from && day <= to);
}

type Two = {
  readonly before: readonly Placed[];
  readonly now: readonly Placed[];
  readonly said: readonly UnderstoodLine[];
  readonly since: Day;
};

/** What was done, moved, came new or fell away, each in day order and with the lines of the diary behind it. */
function changesOf({ before, now, said, since }: Two, { garden }: Loaded): readonly string[] {
  const was = new Map(before.map((placed) => [placed.task.id, placed]));
  const is = new Map(now.map((placed) => [placed.task.id, placed]));
  const title = (placed: Placed) => titleOf([placed], planOfTask(placed.task.id, garden.plans));
  const why = (placed: Placed) => {
    const then = was.get(placed.task.id)?.task.window.due;
    const own = then !== placed.task.window.due || !is.has(placed.task.id);
    const lines = own ? reasons(placed, is, said) : [];
    return (lines.length > 0 ? lines : ["to fit the jobs beside it"]).map((line) => `    ${line}`);
  };
  const byDay = now
    .filter((placed) => placed.day >= since)
    .sort((a, b) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1));
  const lines: string[] = [];
  for (const placed of byDay) {
    const then = was.get(placed.task.id);
    if (placed.done && !then?.done) lines.push(`${title(placed)}: done ${sayDay(placed.day)}`);
    else if (!then) lines.push(`${title(placed)}: new, ${sayDay(placed.day)}`, ...why(placed));
    else if (then.day !== placed.day)
      lines.push(moved(title(placed), then.day, placed.day), ...why(placed));
  }
  const gone = before
    .filter(({ task, day }) => !is.has(task.id) && day >= since)
    .sort((a, b) => a.day - b.day);
  return [
    ...lines,
    ...gone.flatMap((placed) => [
      `${title(placed)}: no longer, was ${sayDay(placed.day)}`,
      ...why(placed),
    ]),
  ];
}

function moved(title: string, was: Day, is: Day): string {
  const days = Math.abs(is - was);
  const by = `${days} ${days === 1 ? "day" : "days"} ${is > was ? "later" : "sooner"}`;
  return `${title}: ${sayDay(is)}, was ${sayDay(was)} (${by})`;
}

/** The diary's lines that a task's due day hangs on: those of its planting and of what it was reckoned from, else what was measured in its bed. */
function reasons(
  placed: Placed,
  is: ReadonlyMap<string, Placed>,
  said: readonly UnderstoodLine[],
): readonly string[] {
  const about = subjectsBehind(placed, is);
  const own = said.filter(({ facts }) =>
    facts.some((fact) => "planting" in fact && about.has(fact.planting)),
  );
  const { bed, grounds } = placed.task;
  const warmed = grounds.some((ground) => ground === "soil" || ground === "warmth");
  const measured = said.filter(({ facts }) =>
    facts.some((fact) => fact.kind === "measured" && (fact.bed === null || fact.bed === bed)),
  );
  const lines = own.length > 0 ? own : warmed || placed.task.practice === "water" ? measured : [];
  return lines.map(({ line }) => `${sayDay(line.day)}: ${line.text}`);
}

/** Keys of the planting of a task and of all tasks it was reckoned from. */
function subjectsBehind(placed: Placed, is: ReadonlyMap<string, Placed>): ReadonlySet<string> {
  const keys = new Set<string>();
  const look = ({ task }: Placed) => {
    keys.add(task.subject.key);
    for (const id of task.hangsOn) {
      const behind = is.get(id);
      if (behind && !keys.has(behind.task.subject.key)) look(behind);
    }
  };
  look(placed);
  return keys;
}

/** `changes PLAN --since DAY`: what the diary has moved, done, brought and taken away since then, and why. */
export const CHANGES: Command = { takes: ["since", "on"], run };
