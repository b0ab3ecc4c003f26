import type { Day, DaySpan } from "../../base/index.ts";
import { householdOf, neighbourHelp, type ScheduledTask, type Year } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { inBedOrder, inHarmOrder } from "../events/job-order.ts";
import type { AwayNeed } from "./away-need.ts";
import { type Leave, leavesOf } from "./leave.ts";
import {
  type AwayListName,
  type AwayLists,
  awayListFor,
  buildAwayLists,
  WATER_WAITS_DAYS,
} from "./lists.ts";
import { needsOf } from "./needs.ts";

/** What an absence means for the garden. Plain JSON: jobs are ids of placed tasks, people and beds are keys. */
export type AwayReport = {
  readonly leave: Leave;
  /** Whether they have gone already. */
  readonly begun: boolean;
  /**
   * Before and while they are home, in walking order; after, most harm first; what waits and what those at home do, day
   * by day.
   */
  readonly jobs: AwayLists<string>;
  /** What the garden needs while nobody is at home; empty where somebody is. */
  readonly needs: readonly AwayNeed[];
};

/** Whose absences, null for all; and which day is today. */
export type AwayQuery = { readonly person: string | null; readonly today: Day };

/**
 * A report for each absence of the plan that is not over today, in order; asked for one person, their absences with their
 * own jobs and everybody's. Empty where there is none. The jobs are the feed's own, on the days it has placed them.
 */
export function awayReports(
  plan: Plan,
  year: Year,
  { person, today }: AwayQuery,
): readonly AwayReport[] {
  const leaves = leavesOf(plan, today).filter(
    ({ away }) => person === null || away.length === 0 || away.includes(person),
  );
  return leaves.map((leave) => reportOf(plan, year, { leave, person, today }));
}

type LeaveQuery = AwayQuery & { readonly leave: Leave };

function reportOf(plan: Plan, year: Year, { leave, person, today }: LeaveQuery): AwayReport {
  const situation = { household: householdOf(plan.people, plan.away), today };
  const lists: Record<AwayListName, ScheduledTask[]> = {
    before: [],
    home: [],
    neighbour: [],
    waits: [],
    back: [],
  };
  for (const scheduled of year.scheduled) {
    const list = awayListFor(scheduled, leave, situation);
    if (list !== null && isForPerson(scheduled, list, person)) lists[list].push(scheduled);
  }
  const jobs = buildAwayLists((list) =>
    inListOrder(list, lists[list], plan).map(({ task }) => task.id),
  );
  const needs = needsDuring(leave, lists, { plan, year });
  return { leave, begun: leave.from <= today, jobs, needs };
}

/** All needs of the days with nobody at home; where somebody is, only water, if that is left to a neighbour. */
function needsDuring(
  leave: Leave,
  { neighbour }: AwayLists<ScheduledTask>,
  { plan, year }: { readonly plan: Plan; readonly year: Year },
): readonly AwayNeed[] {
  const watering = neighbour.some(({ task }) => neighbourHelp(task) === "watering");
  const span = unattendedSpan(leave, watering);
  if (!span) return [];
  const bags = new Set(plan.beds.filter(({ kind }) => kind === "bags").map(({ key }) => key));
  return needsOf(year, plan, span).filter((need) => {
    if (need.kind !== "water") return leave.alone.length > 0;
    const waits = bags.has(need.bed ?? "") ? BAGS_WAIT_DAYS : WATER_WAITS_DAYS;
    return watering || span.to - span.from + 1 > waits;
  });
}

/**
 * The number of days in summer that deeply watered bags and pots wait. Source: common practice; little soil, and sun on
 * its sides.
 */
const BAGS_WAIT_DAYS = 1;

/**
 * A task of somebody else who goes as well is on their list only; those of people at home and of the neighbour are on
 * all.
 */
function isForPerson(
  { people }: ScheduledTask,
  list: AwayListName,
  person: string | null,
): boolean {
  if (person === null || list === "home" || list === "neighbour") return true;
  return people.length === 0 || people.includes(person);
}

/**
 * From the first day with nobody at home to the last; the whole absence where those at home leave something to a
 * neighbour; else null.
 */
function unattendedSpan({ alone, from, to }: Leave, asksNeighbour: boolean): DaySpan | null {
  const [first] = alone;
  const last = alone.at(-1);
  if (first && last) return { from: first.from, to: last.to };
  return asksNeighbour ? { from, to } : null;
}

function inListOrder(
  list: AwayListName,
  scheduled: readonly ScheduledTask[],
  plan: Plan,
): readonly ScheduledTask[] {
  switch (list) {
    case "before":
      return inBedOrder(scheduled, plan);
    case "back":
      return inHarmOrder(scheduled, plan);
    case "home":
    case "neighbour":
    case "waits":
      return [...inBedOrder(scheduled, plan)].sort((a, b) => a.day - b.day);
  }
}
