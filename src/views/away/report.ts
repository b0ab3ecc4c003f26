import type { Day } from "../../base/days/day.ts";
import type { Season } from "../../engine/beds/lives.ts";
import { householdOf } from "../../engine/schedule/household.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { mostToLose, walking } from "../events/sessions.ts";
import { type Leave, leavesOf, type Span } from "./leave.ts";
import { type List, type Lists, listOf, listsOf, WATER_WAITS_DAYS } from "./lists.ts";
import type { Need } from "./need.ts";
import { needsOf } from "./needs.ts";
import { wholeOf } from "./whole.ts";

/** What an absence means for the garden. Plain JSON: jobs are ids of placed tasks, people and beds are keys. */
export type AwayReport = {
  readonly leave: Leave;
  /** Whether they have gone already. */
  readonly begun: boolean;
  /** Before and while they are home, in walking order; after, most to lose first; what waits and what those at home have, day by day. */
  readonly jobs: Lists<string>;
  /** What the garden asks for while nobody is there; empty where somebody is. */
  readonly needs: readonly Need[];
};

/** Whose absences, null for all; and which day is today. */
export type Asked = { readonly person: string | null; readonly today: Day };

/**
 * A report for each absence of the plan that is not over today, in order; asked for one person, their absences with their
 * own jobs and everybody's. Empty where there is none. The jobs are the feed's own, on the days it has placed them.
 */
export function awayReports(
  plan: Plan,
  season: Season,
  { person, today }: Asked,
): readonly AwayReport[] {
  const leaves = leavesOf(plan, today).filter(
    ({ away }) => person === null || away.length === 0 || away.includes(person),
  );
  return leaves.map((leave) => reportOf(plan, season, { leave, person, today }));
}

type One = Asked & { readonly leave: Leave };

function reportOf(plan: Plan, season: Season, { leave, person, today }: One): AwayReport {
  const known = { household: householdOf(plan.people, plan.away), today };
  const lists: Record<List, Placed[]> = {
    before: [],
    home: [],
    neighbour: [],
    waits: [],
    back: [],
  };
  for (const placed of season.placed) {
    const list = listOf(placed, leave, known);
    if (list !== null && isAsked(placed, list, person)) lists[list].push(placed);
  }
  const jobs = listsOf((list) => inOrder(list, lists[list], plan).map(({ task }) => task.id));
  const needs = needsWhile(leave, lists, { plan, season });
  return { leave, begun: leave.from <= today, jobs, needs };
}

/** All needs of the days with nobody there; of a garden with somebody in it, water alone, where that is left to a neighbour. */
function needsWhile(
  leave: Leave,
  { neighbour }: Lists<Placed>,
  { plan, season }: { readonly plan: Plan; readonly season: Season },
): readonly Need[] {
  const watering = neighbour.some(({ task }) => task.practice === "water");
  const span = unwatched(leave, watering);
  if (!span) return [];
  const bags = new Set(plan.beds.filter(({ kind }) => kind === "bags").map(({ key }) => key));
  return needsOf(wholeOf(plan, season), season.placed, span).filter((need) => {
    if (need.kind !== "water") return leave.alone.length > 0;
    const waits = bags.has(need.bed ?? "") ? BAGS_WAIT_DAYS : WATER_WAITS_DAYS;
    return watering || span.to - span.from + 1 > waits;
  });
}

/** Bags and pots that were watered deep wait for so many days in summer. Source: common practice; little soil, and sun on its sides. */
const BAGS_WAIT_DAYS = 1;

/** What falls to another who goes as well is theirs; what those at home and the neighbour have concerns all. */
function isAsked({ people }: Placed, list: List, person: string | null): boolean {
  if (person === null || list === "home" || list === "neighbour") return true;
  return people.length === 0 || people.includes(person);
}

/** From the first day nobody is left to the last; all of the absence where those at home leave something to a neighbour; else null. */
function unwatched({ alone, from, to }: Leave, asksNeighbour: boolean): Span | null {
  const [first] = alone;
  const last = alone.at(-1);
  if (first && last) return { from: first.from, to: last.to };
  return asksNeighbour ? { from, to } : null;
}

function inOrder(list: List, placed: readonly Placed[], plan: Plan): readonly Placed[] {
  switch (list) {
    case "before":
      return walking(placed, plan);
    case "back":
      return mostToLose(placed, plan);
    case "home":
    case "neighbour":
    case "waits":
      return [...walking(placed, plan)].sort((a, b) => a.day - b.day);
  }
}
