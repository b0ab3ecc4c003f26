import { type Day, instantOf, isoOf, type Minute, weekdayOf } from "../../base/index.ts";
import {
  type PublishedState,
  type ScheduledTask,
  sunsetOn,
  tasksThatMustWait,
} from "../../engine/index.ts";
import type { Hours, Person, Plan } from "../../garden/model/index.ts";
import { textWithDone, titleWithDone } from "./done.ts";
import { EVENING_BEFORE, type Event, type EventSet } from "./event.ts";
import { eventFor } from "./event-for.ts";
import {
  type EventTaskGroup,
  groupsAlike,
  groupsBy,
  inIdOrder,
  isAlikeTask,
  leadFirst,
} from "./grouping.ts";
import { minutesOf, needsDaylight } from "./job-order.ts";
import { isOpen, openEvent } from "./open.ts";
import { voiceOf } from "./sentences.ts";
import { sessionText } from "./sessions.ts";
import { visitTitle } from "./visit-title.ts";
import { hasSecrets, isNoRung, wholeDayEvents, wholeDaysOf } from "./whole-days.ts";

const BEFORE_SESSION = 30;

const KINDS = { session: "task", daily: "daily", timed: "rung", warning: "warning" } as const;

/** Like tasks of one day as one event, all day. */
function taskEvent(group: readonly ScheduledTask[], plan: Plan, set: EventSet): Event {
  const [lead] = group;
  if (!lead) throw new RangeError("an event needs a task");
  const byName = inIdOrder(group);
  const text = textWithDone(byName, plan, voiceOf(plan, "household"));
  return eventFor(group, {
    key: lead.task.id,
    set,
    kind: KINDS[lead.task.rhythm],
    title: titleWithDone(byName, plan),
    text,
    readerText: group.some(hasSecrets) ? textWithDone(byName, plan, voiceOf(plan, "reader")) : text,
    when: { kind: "all day", day: lead.day },
    day: lead.day,
    busy: false,
    remindMinutesBefore: EVENING_BEFORE,
  });
}

/**
 * When somebody's work of a day begins: with their hours, or sooner if the sun would set before all that needs daylight is
 * done and they are at home by then. Work under a roof is done after it, and moves nothing.
 */
function beginsAt(person: Person, hours: Hours, { outdoors, sunset }: Daylight): Minute {
  if (sunset === null || outdoors === 0 || hours.from + outdoors <= sunset) return hours.from;
  const home = person.home.find(
    ({ weekday, from, to }) => weekday === hours.weekday && from <= hours.from && to >= hours.from,
  );
  const soonest = home?.from ?? (person.home.length === 0 ? 0 : hours.from);
  return Math.min(hours.from, Math.max(sunset - outdoors, soonest));
}

/** How long the work outdoors takes, and the day's sunset; null where none is known. */
type Daylight = { readonly outdoors: Minute; readonly sunset: Minute | null };

/** A person's tasks of a day and those that do not fit into their hours, where that is shown. */
type Session = {
  readonly person: Person;
  readonly hours: Hours;
  readonly day: Day;
  readonly jobs: readonly ScheduledTask[];
  readonly waiting: readonly ScheduledTask[];
};

/** Everybody's sessions in day order; what does not fit is shown once a week. */
function sessionsOf(
  groups: readonly EventTaskGroup[],
  persons: ReadonlyMap<ScheduledTask, Person>,
): readonly Session[] {
  const reportedWeeks = new Set<string>();
  const inOrder = [...groups].sort(([a], [b]) => a.day - b.day);
  return inOrder.flatMap((jobs) => {
    const [first] = jobs;
    const person = persons.get(first);
    const hours = person?.gardens.find(({ weekday }) => weekday === weekdayOf(first.day));
    if (!person || !hours) return [];
    const { day } = first;
    const week = `${person.key}|${day - weekdayOf(day)}`;
    const over = reportedWeeks.has(week) ? [] : tasksThatMustWait(jobs, hours.to - hours.from);
    if (over.length > 0) reportedWeeks.add(week);
    return [{ person, hours, day, jobs, waiting: over }];
  });
}

/** A person's tasks of a day from the start of their hours, for as long as those that can't wait take. */
function sessionEvent({ person, hours, day, jobs, waiting }: Session, plan: Plan): Event {
  const now = jobs.filter((job) => !waiting.includes(job));
  const [minutes, outdoors] = [minutesOf(now), minutesOf(now.filter(needsDaylight))];
  const { clock, latitude } = plan.site;
  const sunset = latitude === null ? null : sunsetOn(day, latitude, clock);
  const begins = beginsAt(person, hours, { outdoors, sunset });
  const from = instantOf(day, begins, clock);
  const dark = sunset !== null && begins + minutes > sunset;
  return {
    ...eventFor(jobs, {
      key: `${person.key}/${isoOf(day)}`,
      set: "sessions",
      kind: "session",
      title: visitTitle(jobs, plan),
      text: sessionText(jobs, plan, { voice: voiceOf(plan, "household"), waiting, dark }),
      readerText: "",
      when: { kind: "timed", from, to: from + minutes * 60_000 },
      day,
      busy: true,
      remindMinutesBefore: BEFORE_SESSION,
    }),
    people: [person.key],
  };
}

/** Whose session a task is done in; null where it is in none. What anybody at home may do joins the first session of its day. */
function sessionPerson({ task, people, day }: ScheduledTask, plan: Plan): Person | null {
  const joins = task.rhythm === "daily" && task.harm === "when you can";
  if (!(joins || (task.rhythm === "session" && people.length === 1))) return null;
  const gardens = ({ gardens: hours }: Person) =>
    hours.some(({ weekday }) => weekday === weekdayOf(day));
  return plan.people.find((each) => people.includes(each.key) && gardens(each)) ?? null;
}

/** What events are made from: the garden's plan, what was published before, and each person's day for open work. */
export type EventsContext = {
  readonly plan: Plan;
  readonly publishedState: PublishedState;
  readonly openDays: Readonly<Record<string, Day>>;
};

/**
 * The garden's two sets of events: each task in exactly one event of each. What hardens off on one day is one event from
 * carrying out to bringing in, in both. In the tasks set like tasks of one day are one all-day event. In the sessions set a
 * person's jobs of a day are one session, still-open work is one event a person, and what else falls on one day for the same
 * people is one event, with what hardens off that day where there is such. The published state keeps an event's UID when
 * its tasks change. In no particular order.
 */
export function eventsOf(
  scheduled: readonly ScheduledTask[],
  { plan, publishedState, openDays }: EventsContext,
): readonly Event[] {
  const open = scheduled.filter((each) => isOpen(each, plan, openDays));
  const isStillOpen = new Set(open);
  const persons = new Map<ScheduledTask, Person>();
  for (const each of scheduled) {
    const person = isStillOpen.has(each) ? null : sessionPerson(each, plan);
    if (person) persons.set(each, person);
  }
  const rest = scheduled.filter((each) => !isStillOpen.has(each) && !persons.has(each));
  const days = wholeDaysOf(rest, publishedState);
  const inBoth = new Set(rest);
  for (const { jobs } of days) for (const job of jobs) inBoth.delete(job);
  const setOf = (each: ScheduledTask): "tasks" | "both" => (inBoth.has(each) ? "both" : "tasks");
  const isAlike = (a: ScheduledTask, b: ScheduledTask) =>
    isAlikeTask(a, b) && inBoth.has(a) === inBoth.has(b);
  const alike = groupsAlike(scheduled.filter(isNoRung), isAlike).map((group) =>
    taskEvent(leadFirst(group, publishedState), plan, setOf(group[0])),
  );
  return [
    ...alike,
    ...days.flatMap((day) => wholeDayEvents(day, plan)),
    ...sessionEvents(persons, plan),
    ...openEvents(open, { plan, openDays }),
  ];
}

function sessionEvents(persons: ReadonlyMap<ScheduledTask, Person>, plan: Plan): readonly Event[] {
  const days = groupsBy([...persons.keys()], (each) => `${persons.get(each)?.key}|${each.day}`);
  return sessionsOf([...days.values()], persons).map((each) => sessionEvent(each, plan));
}

function openEvents(
  open: readonly ScheduledTask[],
  { plan, openDays }: Pick<EventsContext, "plan" | "openDays">,
): readonly Event[] {
  return [...groupsBy(open, (each) => each.people[0] ?? "")].map(([person, group]) =>
    openEvent(person, openDays[person] ?? group[0].day, group, plan),
  );
}
