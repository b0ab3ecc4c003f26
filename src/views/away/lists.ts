import { type Day, earliest, latest, plus } from "../../base/days/day.ts";
import { PICKING } from "../../engine/practices/harvest.ts";
import type { Task } from "../../engine/practices/task.ts";
import type { Household } from "../../engine/schedule/household.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import { daysAlone, daysOf, isIn, type Leave } from "./leave.ts";

/** Where a job stands that an absence touches, each in exactly one: done before, done by those at home, a neighbour's, left till after, or late after. */
export type List = "before" | "home" | "neighbour" | "waits" | "back";

/** Something for each of LISTS. */
export type Lists<Of> = Readonly<Record<List, readonly Of[]>>;

/** The lists that a function gives, one after another. */
export function listsOf<Of>(of: (list: List) => readonly Of[]): Lists<Of> {
  const [before, home, neighbour] = [of("before"), of("home"), of("neighbour")];
  return { before, home, neighbour, waits: of("waits"), back: of("back") };
}

/** What sorting asks of the household, and which day is today. */
export type Known = { readonly household: Household; readonly today: Day };

/** Beds that were watered deep wait for so many days of their week, and no longer. Source: house rule; a week's water is one event, and half of the week may pass without it. */
export const WATER_WAITS_DAYS = 3;

/**
 * The list a placed task belongs in, or null where the absence does not touch it. Whatever the feed has placed in
 * the days of the absence is in one, unless it is done; of the days before and after, what they change for those who go.
 */
export function listOf(placed: Placed, leave: Leave, known: Known): List | null {
  const { done, day, task } = placed;
  if (done) return null;
  if (isIn(day, leave)) return during(placed, leave, known);
  if (task.rhythm === "warning" || task.rhythm === "timed" || !isTheirs(placed, leave)) return null;
  return day < leave.from ? early(placed, leave, known) : late(placed, leave);
}

/** Whether it falls to one of those who go, or to everybody. */
function isTheirs({ people }: Placed, { away }: Leave): boolean {
  return people.length === 0 || people.some((person) => away.includes(person));
}

/** Placed in these days: somebody has it, or a neighbour can do it, or it waits, or it is done early, or it is late. A board is off rather than on. */
function during(placed: Placed, leave: Leave, { household, today }: Known): List {
  const { task, window } = placed;
  const canBeEarly = window.earliest < leave.from && today < leave.from;
  if (somebodyHas(placed, household)) return "home";
  if (task.practice === "board" && canBeEarly) return "before";
  if (isForNeighbour(task)) return "neighbour";
  if (task.practice === "not yet" || window.latest > leave.to) return "waits";
  return canBeEarly ? "before" : "back";
}

function somebodyHas({ task, people, day }: Placed, household: Household): boolean {
  const there = household.people.filter((person) => household.absence(person, day) === null);
  if (people.length === 0) return task.rhythm === "warning" && there.length > 0;
  return there.some(({ key }) => people.includes(key));
}

/** What wants no knowledge of gardening: a can, a look under a board, carrying trays, a cover before a frost night, picking what would grow out. */
function isForNeighbour({ practice, rhythm, step, kinds }: Task): boolean {
  switch (practice) {
    case "water":
    case "board":
      return true;
    case "harden off":
      return rhythm === "timed";
    case "first frost":
      return step.endsWith("warning");
    case "harvest":
      return kinds.includes(PICKING);
    default:
      return false;
  }
}

/** Work placed longer before they go than this is not told as last work [days]. Source: house rule; it has its own event in time. */
const LAST_WEEKS_DAYS = 14;

/** Placed shortly before: told where it must not slip, since its last good day falls into the absence, or since a row dies of it. */
function early(placed: Placed, leave: Leave, { household, today }: Known): List | null {
  const { task, day, window } = placed;
  if (day < latest(today, plus(leave.from, -LAST_WEEKS_DAYS))) return null;
  if (task.harm !== "tonight" && !isIn(window.latest, leave)) return null;
  const urgent = task.harm !== "when you can";
  return urgent || !anotherCan(placed, leave, household) ? "before" : null;
}

/** Whether another would do it, who is there on some day of the absence before its last good one is past. */
function anotherCan({ task, window }: Placed, leave: Leave, household: Household): boolean {
  const span = { from: leave.from, to: earliest(window.latest, leave.to) };
  return household.people.some(
    (person) =>
      !leave.away.includes(person.key) &&
      (task.whose === null || task.whose === person.key) &&
      ![task.practice, ...task.kinds].some((kind) => person.leaveOut.includes(kind)) &&
      daysOf(span).some((day) => household.absence(person, day) === null),
  );
}

/** Placed after, though it was due before they are back. */
function late({ task, day, window }: Placed, leave: Leave): List | null {
  if (window.due > leave.to) return null;
  const dry = daysAlone(leave, { from: window.earliest, to: window.latest });
  if (task.practice === "water" && dry > WATER_WAITS_DAYS) return "neighbour";
  return window.latest >= day ? "waits" : "back";
}
