import { type Day, earliest, latest, plus, theDay } from "../../base/days/day.ts";
import { why } from "../practices/say.ts";
import type { Harm, Task, Window } from "../practices/task.ts";
import { keepDays, stands } from "./calm.ts";
import { drawnTogether } from "./gather.ts";
import type { Household } from "./household.ts";
import type { LastTold, Placed, Standing } from "./placed.ts";
import {
  type Choice,
  chooseDaily,
  chooseSession,
  eligible,
  type Load,
  loadKey,
} from "./session.ts";
import { CARRY, type Carrying, carryingOn } from "./timed.ts";
import { yearBefore } from "./year-of.ts";

/** What a task is worth against another in the way of days late. */
export const HARM_WEIGHT: Readonly<Record<Harm, number>> = {
  tonight: 100,
  "this week": 10,
  "when you can": 1,
};

/** Done tasks by id, with the day and, where the diary says, the person. */
export type Done = ReadonlyMap<string, { readonly day: Day; readonly by: string | null }>;

/** What placing goes by; `load` is added to as people are given work. */
export type Placing = {
  readonly household: Household;
  readonly standing: Standing;
  readonly done: Done;
  readonly usual: Readonly<Record<string, Day>>;
  /** Days on which jobs of the years before were done, by their ids. */
  readonly doneBefore: ReadonlyMap<string, Day>;
  readonly load: Load;
  /** Days of the tasks placed so far, by id; added to as they are placed, so that none comes before what must come first. */
  readonly days: Map<string, Day>;
};

type Group = readonly [Task, ...Task[]];

/** Tasks that belong on one day, each group in the order given; groups with most to lose first, then by last good day, due day and the order of their first tasks. */
function inGroups(tasks: readonly Task[]): readonly Group[] {
  const groups = new Map<string, [Task, ...Task[]]>();
  for (const task of tasks) {
    const key = task.together ?? task.id;
    const known = groups.get(key);
    if (known) known.push(task);
    else groups.set(key, [task]);
  }
  const weight = ([first]: Group) => HARM_WEIGHT[first.harm];
  return [...groups.values()].sort(
    (a, b) =>
      weight(b) - weight(a) ||
      a[0].window.latest - b[0].window.latest ||
      a[0].window.due - b[0].window.due,
  );
}

/** The window all of a group can keep: the latest start, the earliest end, but never an end before its start. */
function common(group: Group): Window {
  if (group.length === 1) return group[0].window;
  const from = latest(...group.map((task) => task.window.earliest));
  const to = latest(from, earliest(...group.map((task) => task.window.latest)));
  const due = earliest(to, latest(from, group[0].window.due));
  return { earliest: from, due, latest: to, better: group[0].window.better };
}

/** What was last told for the whole group, where it still stands. */
function stillTold(group: Group, { standing, household }: Placing): LastTold | null {
  const told = standing[group[0].id];
  if (!told || !group.every((task) => stands(told, task))) return null;
  const people = eligible(household, group);
  const able = told.people.every((key) =>
    people.some((person) => person.key === key && household.about(person, told.day)),
  );
  const named =
    told.people.length > 0 || household.people.length === 0 || group[0].rhythm === "warning";
  return able && named ? told : null;
}

/** The window, beginning no sooner than the days of what must come before. */
function inOrder(group: Group, window: Window, days: Placing["days"]): Window {
  const before = group.flatMap((task) => task.after.flatMap((id) => days.get(id) ?? []));
  if (before.length === 0) return window;
  const from = latest(window.earliest, ...before);
  return {
    ...window,
    earliest: from,
    due: latest(from, window.due),
    latest: latest(from, window.latest),
  };
}

/** A Saturday from which every other one is counted. */
const A_SATURDAY = theDay(2000, 1, 1);
const FORTNIGHT = 14;

/** The window with its due day on the round that a task keeps to, the last on or before it; as it was where that is too early. */
function onRound({ round }: Task, window: Window): Window {
  if (round === null) return window;
  const since = (window.due - A_SATURDAY) % FORTNIGHT;
  const due = plus(window.due, since < 0 ? -since - FORTNIGHT : -since);
  return due < window.earliest ? window : { ...window, due };
}

function choose(group: Group, placing: Placing, drawn: Day | undefined): Choice {
  const own = common(group);
  const near = drawn === undefined ? own : { ...own, due: drawn };
  const wanted = onRound(group[0], inOrder(group, near, placing.days));
  const choice = chooseIn(group, wanted, placing);
  if (choice.day <= own.latest || choice.note !== null) return choice;
  return { ...choice, note: why("It had to wait for the job before it.") };
}

function chooseIn(group: Group, window: Window, { household, load }: Placing): Choice {
  if (group[0].rhythm === "warning") return { day: window.earliest, people: [], note: null };
  if (household.people.length === 0) return { day: window.due, people: [], note: null };
  if (group[0].rhythm === "daily") return chooseDaily(household, group, window);
  return chooseSession(household, group, window, load);
}

function timed(task: Task, placing: Placing): Placed {
  const carrying: Carrying = carryingOn(placing.household, task.window.due, task.timed?.lasts ?? 0);
  const end = task.timed?.part === "in" ? carrying.back : carrying.out;
  const say =
    carrying.shade && task.timed?.part === "out"
      ? [carrying.shade, ...task.say.slice(1)]
      : task.say;
  return placedOn(say === task.say ? task : { ...task, say }, placing, {
    day: task.window.due,
    people: end.people,
    at: { from: end.at, to: end.at + CARRY },
  });
}

type On = Pick<Placed, "day" | "people"> & Partial<Pick<Placed, "window" | "at" | "done" | "note">>;

/** One shape for everything placed, field by field. */
function placedOn(task: Task, { usual, doneBefore }: Placing, on: On): Placed {
  return {
    task,
    day: on.day,
    window: on.window ?? task.window,
    people: on.people,
    at: on.at ?? null,
    usual: usual[task.id] ?? null,
    lastYear: doneBefore.get(yearBefore(task.id)) ?? null,
    done: on.done ?? null,
    note: on.note ?? null,
  };
}

function placeGroup(group: Group, placing: Placing, drawn: Day | undefined): readonly Placed[] {
  if (group[0].rhythm === "timed") return group.map((task) => timed(task, placing));
  const choice = choose(group, placing, drawn);
  const told = stillTold(group, placing);
  const { day, people } = told ?? choice;
  if (group[0].rhythm === "session")
    for (const person of people) {
      const key = loadKey(person, day);
      placing.load.set(
        key,
        group.reduce((sum, task) => sum + task.minutes, placing.load.get(key) ?? 0),
      );
    }
  for (const task of group) placing.days.set(task.id, day);
  return group.map((task) => {
    const own = placing.standing[task.id];
    if (!told || !own) return placedOn(task, placing, { day, people, note: choice.note });
    const say = keepDays(task.say, own.days);
    const calm = say === task.say ? task : { ...task, say };
    return placedOn(calm, placing, { day, people, window: own.window, note: told.note });
  });
}

function placeDone(
  task: Task,
  done: { readonly day: Day; readonly by: string | null },
  placing: Placing,
): Placed {
  const told = { ...task, certainty: "done" } as const;
  placing.days.set(task.id, done.day);
  const people = done.by === null ? [] : [done.by];
  return placedOn(told, placing, { day: done.day, people, done });
}

/**
 * Every task on a day: what is done on the day it was done, the rest one after another, most to lose first,
 * each within its window as far as people's hours, homes and absences let it, like jobs that can wait on one day; a warning on its first day. What was told stays told while
 * it stands. Deterministic; the order of `tasks` does not matter. Sorted by id.
 */
export function place(tasks: readonly Task[], placing: Placing): readonly Placed[] {
  const byId = [...tasks].sort((a, b) => (a.id < b.id ? -1 : 1));
  const placed = new Map<string, Placed>();
  const open: Task[] = [];
  for (const task of byId) {
    const done = placing.done.get(task.id);
    if (done) placed.set(task.id, placeDone(task, done, placing));
    else open.push(task);
  }
  const drawn = drawnTogether(open);
  for (const group of inGroups(open))
    for (const each of placeGroup(group, placing, drawn.get(group[0].id)))
      placed.set(each.task.id, each);
  return byId.flatMap((task) => placed.get(task.id) ?? []);
}
