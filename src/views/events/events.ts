import { type Day, instantOf, isoOf, type Minute, weekdayOf } from "../../base/index.ts";
import {
  type PublishedState,
  type ScheduledTask,
  sunsetOn,
  tasksThatMustWait,
} from "../../engine/index.ts";
import type { Hours, Person, Plan } from "../../garden/model/index.ts";
import { EVENING_BEFORE, type Event, type EventSet, eventFor } from "./event.ts";
import { isOpen, openEvent } from "./open.ts";
import { voiceOf } from "./sentences.ts";
import { inHarmOrder, sessionText } from "./sessions.ts";
import { textOfAll } from "./texts.ts";
import { sessionTitle, titleOf } from "./titles.ts";

const BEFORE_SESSION = 30;
const BEFORE_RUNG = 10;

type EventTaskGroup = readonly [ScheduledTask, ...ScheduledTask[]];

/** Whether two tasks of one day are one event: the same practice and verb, at one hour, for the same people. */
function isAlikeTask(a: ScheduledTask, b: ScheduledTask): boolean {
  return (
    a.task.practice === b.task.practice &&
    a.task.title.verb === b.task.title.verb &&
    a.task.rhythm === b.task.rhythm &&
    a.at?.from === b.at?.from &&
    a.done?.day === b.done?.day &&
    a.people.length === b.people.length &&
    a.people.every((person, i) => person === b.people[i])
  );
}

/**
 * Tasks in groups of one event each, in the order of their first tasks. A linear search, because days have few tasks
 * and a key for each would cost more.
 */
function groupsAlike(
  scheduled: readonly ScheduledTask[],
  isAlike: (a: ScheduledTask, b: ScheduledTask) => boolean,
): readonly EventTaskGroup[] {
  const groups: [ScheduledTask, ...ScheduledTask[]][] = [];
  const byDay = new Map<Day, [ScheduledTask, ...ScheduledTask[]][]>();
  for (const each of scheduled) {
    const today = byDay.get(each.day) ?? [];
    const known = today.find(([first]) => isAlike(first, each));
    if (known) known.push(each);
    else {
      const group: [ScheduledTask, ...ScheduledTask[]] = [each];
      byDay.set(each.day, today);
      today.push(group);
      groups.push(group);
    }
  }
  return groups;
}

function inIdOrder(group: readonly ScheduledTask[]): readonly ScheduledTask[] {
  if (group.length < 2) return group;
  return [...group].sort((a, b) => (a.task.id < b.task.id ? -1 : 1));
}

/** The task that gives the event its UID: the smallest id of those that gave one before, else the smallest. */
function leadFirst(
  group: readonly ScheduledTask[],
  publishedState: PublishedState,
): readonly ScheduledTask[] {
  if (group.length < 2) return group;
  const ordered = inIdOrder(group);
  const lead = ordered.find((each) => publishedState[each.task.id]?.lead) ?? ordered[0];
  return lead ? [lead, ...ordered.filter((each) => each !== lead)] : [];
}

function groupsBy<K>(
  scheduled: readonly ScheduledTask[],
  keyOf: (each: ScheduledTask) => K,
): readonly (readonly ScheduledTask[])[] {
  const groups = new Map<K, ScheduledTask[]>();
  for (const each of scheduled) {
    const key = keyOf(each);
    const known = groups.get(key);
    if (known) known.push(each);
    else groups.set(key, [each]);
  }
  return [...groups.values()];
}

const KINDS = { session: "task", daily: "daily", timed: "rung", warning: "warning" } as const;

/** Whether a text for the household may have what a reader's must not. */
function hasSecrets({ task, done, note }: ScheduledTask): boolean {
  return (
    done !== null || note?.for === "household" || task.say.some((each) => each.for === "household")
  );
}

/** Like tasks of one day as one event, all day or at their hour. */
function taskEvent(group: readonly ScheduledTask[], plan: Plan, set: EventSet): Event {
  const [lead] = group;
  if (!lead) throw new RangeError("an event needs a task");
  const byName = inIdOrder(group);
  const { clock } = plan.site;
  const text = textOfAll(byName, plan, voiceOf(plan, "household"));
  return eventFor(group, {
    key: lead.task.id,
    set,
    kind: KINDS[lead.task.rhythm],
    title: titleOf(byName, plan),
    text,
    readerText: group.some(hasSecrets) ? textOfAll(byName, plan, voiceOf(plan, "reader")) : text,
    when: lead.at
      ? {
          kind: "timed",
          from: instantOf(lead.day, lead.at.from, clock),
          to: instantOf(lead.day, lead.at.to, clock),
        }
      : { kind: "all day", day: lead.day },
    day: lead.day,
    busy: lead.at !== null,
    remindMinutesBefore: lead.at ? BEFORE_RUNG : EVENING_BEFORE,
  });
}

/**
 * When somebody's work of a day begins: with their hours, or sooner if the sun would set before it is done and they are
 * at home by then.
 */
function beginsAt(person: Person, hours: Hours, { day, minutes, plan }: SessionLength): Minute {
  const { latitude, clock } = plan.site;
  const sunset = latitude === null ? null : sunsetOn(day, latitude, clock);
  if (sunset === null || hours.from + minutes <= sunset) return hours.from;
  const home = person.home.find(
    ({ weekday, from, to }) => weekday === hours.weekday && from <= hours.from && to >= hours.from,
  );
  const soonest = home?.from ?? (person.home.length === 0 ? 0 : hours.from);
  return Math.min(hours.from, Math.max(sunset - minutes, soonest));
}

type SessionLength = { readonly day: Day; readonly minutes: number; readonly plan: Plan };

const minutesOf = (jobs: readonly ScheduledTask[]) =>
  jobs.reduce((sum, job) => sum + job.task.minutes, 0);

/** A person's tasks of a day and those that do not fit into their hours, where that is shown. */
type Session = {
  readonly person: Person;
  readonly hours: Hours;
  readonly day: Day;
  readonly jobs: readonly ScheduledTask[];
  readonly waiting: readonly ScheduledTask[];
};

/** Everybody's sessions in day order, except on days without hours; what does not fit is shown once a week. */
function sessionsOf(groups: readonly (readonly ScheduledTask[])[], plan: Plan): readonly Session[] {
  const reportedWeeks = new Set<string>();
  const inOrder = [...groups].sort((a, b) => (a[0]?.day ?? 0) - (b[0]?.day ?? 0));
  return inOrder.flatMap((jobs) => {
    const [first] = jobs;
    const person = plan.people.find(({ key }) => key === first?.people[0]);
    const hours = person?.gardens.find(({ weekday }) => first && weekday === weekdayOf(first.day));
    if (!first || !person || !hours) return [];
    const { day } = first;
    const week = `${person.key}|${day - weekdayOf(day)}`;
    const over = reportedWeeks.has(week) ? [] : tasksThatMustWait(jobs, hours.to - hours.from);
    if (over.length > 0) reportedWeeks.add(week);
    return [{ person, hours, day, jobs, waiting: over }];
  });
}

/** A person's tasks of a day from the start of their hours, for as long as those that can't wait take. */
function sessionEvent({ person, hours, day, jobs, waiting }: Session, plan: Plan): Event {
  const minutes = minutesOf(jobs.filter((job) => !waiting.includes(job)));
  const { clock } = plan.site;
  const from = instantOf(day, beginsAt(person, hours, { day, minutes, plan }), clock);
  return {
    ...eventFor(jobs, {
      key: `${person.key}/${isoOf(day)}`,
      set: "sessions",
      kind: "session",
      title: sessionTitle(inHarmOrder(jobs, plan)),
      text: sessionText(jobs, plan, { voice: voiceOf(plan, "household"), waiting }),
      readerText: "",
      when: { kind: "timed", from, to: from + minutes * 60_000 },
      day,
      busy: true,
      remindMinutesBefore: BEFORE_SESSION,
    }),
    people: [person.key],
  };
}

/** Whether it is done in somebody's gardening hours: then it is in a session and, all day, among the tasks. */
function inSession(scheduled: ScheduledTask, plan: Plan): boolean {
  const { task, people, day, done } = scheduled;
  if (task.rhythm !== "session" || people.length !== 1 || done) return false;
  const person = plan.people.find((each) => each.key === people[0]);
  return person?.gardens.some((hours) => hours.weekday === weekdayOf(day)) ?? false;
}

/** What events are made from: the garden's plan, what was published before, and each person's day for open work. */
export type EventsContext = {
  readonly plan: Plan;
  readonly publishedState: PublishedState;
  readonly openDays: Readonly<Record<string, Day>>;
};

/**
 * The garden's two sets of events: each task in exactly one event of each. In the tasks set like tasks of one day are
 * one all-day event. In the sessions set a person's jobs of a day are one session, still-open work is one event a
 * person, and what needs no gardening hours is as in the tasks set. The published state keeps an event's UID when its
 * tasks change. In no particular order.
 */
export function eventsOf(
  scheduled: readonly ScheduledTask[],
  { plan, publishedState, openDays }: EventsContext,
): readonly Event[] {
  const open = scheduled.filter((each) => isOpen(each, plan, openDays));
  const jobs = scheduled.filter((each) => inSession(each, plan) && !open.includes(each));
  const inSessions = new Set([...open, ...jobs]);
  const setOf = (each: ScheduledTask): "tasks" | "both" =>
    inSessions.has(each) ? "tasks" : "both";
  const isAlike = (a: ScheduledTask, b: ScheduledTask) =>
    isAlikeTask(a, b) && inSessions.has(a) === inSessions.has(b);
  const alike = groupsAlike(scheduled, isAlike).map((group) =>
    taskEvent(leadFirst(group, publishedState), plan, setOf(group[0])),
  );
  const days = groupsBy(jobs, (each) => `${each.people[0] ?? ""}|${each.day}`);
  const sessions = sessionsOf(days, plan).map((each) => sessionEvent(each, plan));
  const stillOpen = groupsBy(open, (each) => each.people[0] ?? "").map((group) => {
    const person = group[0]?.people[0] ?? "";
    return openEvent(person, openDays[person] ?? group[0]?.day ?? (0 as Day), group, plan);
  });
  return [...alike, ...sessions, ...stillOpen];
}
