import { type Day, earliest, latest, plus } from "../../base/index.ts";
import type { Task } from "../practices/all.ts";
import { everyOtherSaturday } from "../practices/round.ts";
import { why } from "../practices/sentence.ts";
import type { Harm, Window } from "../practices/task.ts";
import type { ToldOn } from "../practices/told-on.ts";
import { movedWindow, standingOf } from "./calm.ts";
import { sharedDaysOf } from "./gather.ts";
import type { Household } from "./household.ts";
import { withPublishedDays } from "./published-state.ts";
import type { PublishedState, PublishedTask, ScheduledTask } from "./scheduled-task.ts";
import {
  type Choice,
  chooseDaily,
  chooseSession,
  eligible,
  type Load,
  loadKey,
  nearestFirst,
} from "./session.ts";
import { CARRY, type Carrying, carryingOn } from "./timed.ts";
import { yearBefore } from "./year-of.ts";

/** The weight of a day's delay by harm. */
export const HARM_WEIGHT: Readonly<Record<Harm, number>> = {
  tonight: 100,
  "this week": 10,
  "when you can": 1,
};

/** Done tasks by id, with the day and, where the diary says, the person. */
export type DoneTasks = ReadonlyMap<string, { readonly day: Day; readonly by: string | null }>;

/** What scheduling uses; `load` grows as people are given work. */
export type SchedulingInput = {
  readonly household: Household;
  readonly publishedState: PublishedState;
  /** The day as of which this year's weather is known; null: it is not. */
  readonly weatherAsOf: Day | null;
  readonly done: DoneTasks;
  readonly baseline: Readonly<Record<string, Day>>;
  /** Days on which the same tasks of earlier years were done, by their ids. */
  readonly doneBefore: ReadonlyMap<string, Day>;
  readonly load: Load;
  /** Days of the tasks scheduled so far, by id; it grows with each, so that none comes before its predecessors. */
  readonly days: Map<string, Day>;
  /** A task in the words of the day it comes on; left out where no words hang on it. */
  readonly toldOn?: ToldOn;
};

type TaskGroup = readonly [Task, ...Task[]];

/**
 * Tasks that belong on one day, each group in the order given; groups with most harm first, then by last good day, due
 * day and the order of their first tasks.
 */
function inGroups(tasks: readonly Task[]): readonly TaskGroup[] {
  const groups = new Map<string, [Task, ...Task[]]>();
  for (const task of tasks) {
    const key = task.together ?? task.id;
    const known = groups.get(key);
    if (known) known.push(task);
    else groups.set(key, [task]);
  }
  const weight = ([first]: TaskGroup) => HARM_WEIGHT[first.harm];
  return [...groups.values()].sort(
    (a, b) =>
      weight(b) - weight(a) ||
      a[0].window.latest - b[0].window.latest ||
      a[0].window.due - b[0].window.due,
  );
}

/**
 * The window for a whole group: the latest start and the earliest end, but never an end before its start; where nobody is
 * about in all that time, the first day on which somebody is, if any of the group can still wait for it.
 */
function commonWindow(group: TaskGroup, { around }: Household): Window {
  if (group.length === 1) return group[0].window;
  const from = latest(...group.map((task) => task.window.earliest));
  const ends = group.map((task) => task.window.latest);
  const common = latest(from, earliest(...ends));
  const home = firstAround(around, from, latest(common, ...ends));
  const last = home === null || home <= common ? common : home;
  const due = earliest(last, latest(from, group[0].window.due));
  return { earliest: from, due, latest: last, better: group[0].window.better };
}

/** The first day of two and those between on which somebody is about, or null. */
function firstAround(around: Household["around"], from: Day, to: Day): Day | null {
  for (let day = from; day <= to; day = plus(day, 1)) if (around(day)) return day;
  return null;
}

/** What was last published for the whole group, where it is still valid; `calledSince` as of now. */
function stillPublished(
  group: TaskGroup,
  { publishedState, household, weatherAsOf }: SchedulingInput,
): PublishedTask | null {
  const published = publishedState[group[0].id];
  if (!published) return null;
  const standings = group.map((task) => standingOf(published, task, weatherAsOf));
  if (standings.some(({ stays }) => !stays)) return null;
  const people = eligible(household, group);
  const able = published.people.every((key) =>
    people.some((person) => person.key === key && household.about(person, published.day)),
  );
  const named =
    published.people.length > 0 || household.people.length === 0 || group[0].rhythm === "warning";
  const away = published.people.length === 0 && !household.around(published.day);
  if (!able || !named || away) return null;
  const { calledSince: _, ...rest } = published;
  const [calledSince] = standings.flatMap((each) => each.calledSince ?? []);
  return calledSince === undefined ? rest : { ...rest, calledSince };
}

/** The window, beginning no sooner than the days of its predecessors. */
function inOrder(group: TaskGroup, window: Window, days: SchedulingInput["days"]): Window {
  let from = window.earliest;
  for (const { after } of group) for (const id of after) from = latest(from, days.get(id) ?? from);
  if (from === window.earliest) return window;
  return {
    ...window,
    earliest: from,
    due: latest(from, window.due),
    latest: latest(from, window.latest),
  };
}

/** The window with its due day on the last shared round on or before it; unchanged where that is too early. */
function onRound({ round }: Task, window: Window): Window {
  if (round === null) return window;
  const due = everyOtherSaturday(window.due);
  return due < window.earliest ? window : { ...window, due };
}

function choose(group: TaskGroup, input: SchedulingInput, shared: Day | undefined): Choice {
  const own = commonWindow(group, input.household);
  const { publishedState, weatherAsOf } = input;
  const later = movedWindow(
    publishedState[group[0].id],
    { window: own, kinds: group[0].kinds },
    weatherAsOf,
  );
  const near = shared === undefined ? later : { ...own, due: shared };
  const wanted = onRound(group[0], inOrder(group, near, input.days));
  const choice = chooseIn(group, wanted, input);
  if (choice.day <= own.latest || choice.note !== null) return choice;
  return { ...choice, note: why("It had to wait for the job before it.") };
}

/** The day of a window nearest to a day of it on which somebody is about; that day itself where there is none. */
function nearestAround(household: Household, { earliest, latest }: Window, day: Day): Day {
  if (household.around(day)) return day;
  return nearestFirst([earliest, latest], day).find(household.around) ?? day;
}

function chooseIn(group: TaskGroup, window: Window, { household, load }: SchedulingInput): Choice {
  if (group[0].rhythm === "warning")
    return { day: nearestAround(household, window, window.earliest), people: [], note: null };
  if (household.people.length === 0)
    return { day: nearestAround(household, window, window.due), people: [], note: null };
  if (group[0].rhythm === "daily") return chooseDaily(household, group, window);
  return chooseSession(household, group, window, load);
}

function scheduleTimed(task: Task, input: SchedulingInput): ScheduledTask {
  const carrying: Carrying = carryingOn(input.household, task.window.due, task.timed?.lasts ?? 0);
  const end = carryingEnd(task, carrying);
  for (const person of input.household.people)
    if (end.people.includes(person.key) && !input.household.hasHours(person))
      addLoad(input.load, person.key, task.window.due, CARRY);
  const say =
    carrying.shade && task.timed?.part === "out"
      ? [carrying.shade, ...task.say.slice(1)]
      : task.say;
  return scheduledOn(say === task.say ? task : { ...task, say }, input, {
    day: task.window.due,
    people: end.people,
    at: { from: end.at, to: end.at + CARRY },
  });
}

type TaskSlot = Pick<ScheduledTask, "day" | "people"> &
  Partial<Pick<ScheduledTask, "window" | "at" | "done" | "told" | "note" | "calledSince">>;

/** Builds every scheduled task with the same fields in the same order. */
function scheduledOn(
  task: Task,
  { baseline, doneBefore }: SchedulingInput,
  slot: TaskSlot,
): ScheduledTask {
  return {
    task,
    day: slot.day,
    window: slot.window ?? task.window,
    people: slot.people,
    at: slot.at ?? null,
    usual: baseline[task.id] ?? null,
    lastYear: doneBefore.get(yearBefore(task.id)) ?? null,
    done: slot.done ?? null,
    told: slot.told ?? null,
    note: slot.note ?? null,
    ...(slot.calledSince !== undefined && { calledSince: slot.calledSince }),
  };
}

/** The task in the words of its day, where that is another than its due day or was moved by the diary. */
function toldFor(task: Task, day: Day, { toldOn }: SchedulingInput): Task {
  if (!toldOn || task.sets?.act !== "start") return task;
  return day === task.window.due && !task.basis.includes("seen") ? task : toldOn(task, day);
}

function addLoad(load: Load, person: string, day: Day, minutes: number): void {
  const key = loadKey(person, day);
  load.set(key, (load.get(key) ?? 0) + minutes);
}

function scheduleGroup(
  group: TaskGroup,
  input: SchedulingInput,
  shared: Day | undefined,
): readonly ScheduledTask[] {
  if (group[0].rhythm === "timed") return group.map((task) => scheduleTimed(task, input));
  const published = stillPublished(group, input);
  const isKnown = published && group.every(({ id }) => input.publishedState[id]);
  const choice = isKnown ? published : choose(group, input, shared);
  const { day, people } = published ?? choice;
  const minutes = group.reduce((sum, task) => sum + task.minutes, 0);
  if (group[0].rhythm === "session")
    for (const person of people) addLoad(input.load, person, day, minutes);
  for (const task of group) input.days.set(task.id, day);
  return group.map((due) => {
    const task = toldFor(due, day, input);
    const own = input.publishedState[task.id];
    if (!published || !own) return scheduledOn(task, input, { day, people, note: choice.note });
    const say = withPublishedDays(task.say, own.days);
    const calm = say === task.say ? task : { ...task, say };
    const { note, calledSince } = published;
    const called = calledSince === undefined ? {} : { calledSince };
    return scheduledOn(calm, input, { day, people, window: own.window, note, ...called });
  });
}

function scheduleDone(
  task: Task,
  done: { readonly day: Day; readonly by: string | null },
  input: SchedulingInput,
): ScheduledTask {
  const published = { ...toldFor(task, done.day, input), certainty: "done" } as const;
  input.days.set(task.id, done.day);
  const people = done.by === null ? [] : [done.by];
  const told = toldBeforeDone(task, input) ?? { day: done.day, people, at: null };
  return scheduledOn(published, input, { day: done.day, people, done, told });
}

/** Where a task stood in calendars before it was done: as last published, and carried at the hours of that day; null where it was not. */
function toldBeforeDone(task: Task, input: SchedulingInput): ScheduledTask["told"] {
  const published = input.publishedState[task.id];
  if (!published) return null;
  const { day, people } = published;
  if (task.timed === null) return { day, people, at: null };
  const { at } = carryingEnd(task, carryingOn(input.household, day, task.timed.lasts));
  return { day, people, at: { from: at, to: at + CARRY } };
}

const carryingEnd = ({ timed }: Task, { out, back }: Carrying) =>
  timed?.part === "in" ? back : out;

/**
 * Every task on a day: done tasks on the day they were done, the rest one after another, most harm first, each within
 * its window as far as people's hours, homes and absences allow, similar tasks that can wait on one day; a warning on
 * its first day. A published day stays while it is valid. Deterministic; the order of `tasks` does not matter. Sorted
 * by id.
 */
export function scheduleTasks(
  tasks: readonly Task[],
  input: SchedulingInput,
): readonly ScheduledTask[] {
  const byId = [...tasks].sort((a, b) => (a.id < b.id ? -1 : 1));
  const scheduled = new Map<string, ScheduledTask>();
  const open: Task[] = [];
  for (const task of byId) {
    const done = input.done.get(task.id);
    if (done) scheduled.set(task.id, scheduleDone(task, done, input));
    else open.push(task);
  }
  const shared = sharedDaysOf(open);
  for (const group of inGroups(open))
    for (const each of scheduleGroup(group, input, shared.get(group[0].id)))
      scheduled.set(each.task.id, each);
  return byId.map(({ id }) => scheduled.get(id)).filter((each) => each !== undefined);
}
