import { type Day, earliest, latest, plus } from "../../base/index.ts";
import {
  type Household,
  neighbourHelp,
  practiceOf,
  type ScheduledTask,
} from "../../engine/index.ts";
import { daysAlone, daysWithin, isIn, type Leave } from "./leave.ts";

/**
 * The list that a task affected by an absence is in, exactly one: done before, done by those at home, a neighbour's,
 * left until after, or late after.
 */
export type AwayListName = "before" | "home" | "neighbour" | "waits" | "back";

/** A value for each of LISTS. */
export type AwayLists<Of> = Readonly<Record<AwayListName, readonly Of[]>>;

/** The lists that a function gives, one after another. */
export function buildAwayLists<Of>(of: (list: AwayListName) => readonly Of[]): AwayLists<Of> {
  const [before, home, neighbour] = [of("before"), of("home"), of("neighbour")];
  return { before, home, neighbour, waits: of("waits"), back: of("back") };
}

/** What sorting needs: the household, and which day is today. */
export type HouseholdToday = { readonly household: Household; readonly today: Day };

/**
 * The number of days that a deeply watered bed waits. Source: house rule; a week's water is one event, and half of the
 * week may pass without it.
 */
export const WATER_WAITS_DAYS = 3;

/**
 * The list that a scheduled task belongs in, or null where the absence does not affect it. Every task in the days of
 * the absence is in one, unless it is done; of the days before and after, those that change for the people who go.
 */
export function awayListFor(
  scheduled: ScheduledTask,
  leave: Leave,
  situation: HouseholdToday,
): AwayListName | null {
  const { done, day, task } = scheduled;
  if (done) return null;
  if (isIn(day, leave)) return listDuring(scheduled, leave, situation);
  if (task.rhythm === "warning" || task.rhythm === "timed" || !isTheirs(scheduled, leave))
    return null;
  return day < leave.from ? listBefore(scheduled, leave, situation) : listAfter(scheduled, leave);
}

/** Whether it is a task of somebody who goes, or of everybody. */
function isTheirs({ people }: ScheduledTask, { away }: Leave): boolean {
  return people.length === 0 || people.some((person) => away.includes(person));
}

/** Scheduled in these days: somebody at home does it, or a neighbour, or it waits, or it is done early, or it is late. */
function listDuring(
  scheduled: ScheduledTask,
  leave: Leave,
  { household, today }: HouseholdToday,
): AwayListName {
  const { task, window } = scheduled;
  const canBeEarly = window.earliest < leave.from && today < leave.from;
  if (somebodyHas(scheduled, household)) return "home";
  const { rather } = practiceOf(task.practice).away;
  if (rather === "early" && canBeEarly) return "before";
  if (neighbourHelp(task) !== null) return "neighbour";
  if (rather === "later" || window.latest > leave.to) return "waits";
  return canBeEarly ? "before" : "back";
}

function somebodyHas({ task, people, day }: ScheduledTask, household: Household): boolean {
  const there = household.people.filter((person) => household.absence(person, day) === null);
  if (people.length === 0) return task.rhythm === "warning" && there.length > 0;
  return there.some(({ key }) => people.includes(key));
}

/**
 * Work scheduled longer than this before they go is not listed as last work [days]. Source: house rule; it has its own
 * event in time.
 */
const LAST_WEEKS_DAYS = 14;

/**
 * Scheduled shortly before: listed where it must not slip, because its last good day is in the absence, or because a
 * row dies of it.
 */
function listBefore(
  scheduled: ScheduledTask,
  leave: Leave,
  { household, today }: HouseholdToday,
): AwayListName | null {
  const { task, day, window } = scheduled;
  if (day < latest(today, plus(leave.from, -LAST_WEEKS_DAYS))) return null;
  if (task.harm !== "tonight" && !isIn(window.latest, leave)) return null;
  const urgent = task.harm !== "when you can";
  return urgent || !anotherCan(scheduled, leave, household) ? "before" : null;
}

/** Whether another would do it, who is there on some day of the absence before its last good one is past. */
function anotherCan({ task, window }: ScheduledTask, leave: Leave, household: Household): boolean {
  const span = { from: leave.from, to: earliest(window.latest, leave.to) };
  return household.people.some(
    (person) =>
      !leave.away.includes(person.key) &&
      (task.whose === null || task.whose === person.key) &&
      ![task.practice, ...task.kinds].some((kind) => person.leaveOut.includes(kind)) &&
      daysWithin(span).some((day) => household.absence(person, day) === null),
  );
}

/** Scheduled after, though it was due before they are back. */
function listAfter({ task, day, window }: ScheduledTask, leave: Leave): AwayListName | null {
  if (window.due > leave.to) return null;
  const dry = daysAlone(leave, { from: window.earliest, to: window.latest });
  if (neighbourHelp(task) === "watering" && dry > WATER_WAITS_DAYS) return "neighbour";
  return window.latest >= day ? "waits" : "back";
}
