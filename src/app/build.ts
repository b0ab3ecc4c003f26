import { type Day, dayAt } from "../base/index.ts";
import {
  buildYear,
  coldNightsIn,
  type Garden,
  type Horizon,
  hardDaysIn,
  horizonOf,
  type PublishedState,
  publishedStateOf,
  spellsIn,
  type Year,
  type YearCourse,
} from "../engine/index.ts";
import { newestPlan, type Plan } from "../garden/model/index.ts";
import { yearEvents } from "../views/index.ts";
import type { Event } from "../views/records.ts";

export type {
  Baseline,
  Garden,
  PublishedState,
  PublishedTask,
  TaskOutline,
  Year,
  YearCourse,
} from "../engine/index.ts";
export { buildBaseline, buildYear, type Horizon } from "../engine/index.ts";
export { newestPlan, planOn } from "../garden/model/index.ts";
export { type TaskCard, taskCards } from "../views/index.ts";

/** What a garden's feeds are written from: its year, the events made of it, and what has been published once they are. */
export type Schedule = Pick<Year, "scheduled"> & {
  readonly year: Year;
  readonly events: readonly Event[];
  readonly publishedState: PublishedState;
};

/**
 * What plans come to, as they are written: the course of each planting, in a season that nothing was published of. `instant` [ms since
 * 1970 UTC] is where today begins.
 */
export function courseOf(plans: readonly Plan[], instant: number): YearCourse {
  const id = newestPlan(plans).garden;
  return buildYear({ id, plans, baseline: {} }, horizonOf(plans, instant), {});
}

/** Today as the core knows it, at an instant [ms since 1970 UTC], in the garden's own zone. */
export function horizonAt({ plans }: Pick<Garden, "plans">, instant: number): Horizon {
  return horizonOf(plans, instant);
}

/** The day it is in the garden at an instant [ms since 1970 UTC], by the clock of its newest plan. */
export function todayIn({ plans }: Pick<Garden, "plans">, instant: number): Day {
  return dayAt(instant, newestPlan(plans).site.clock);
}

/** The garden's year at a horizon, its events, and what has been published once they are. */
export function buildSchedule(
  garden: Garden,
  horizon: Horizon,
  published: PublishedState,
): Schedule {
  const year = buildYear(garden, horizon, published);
  const weather = garden.weather ?? null;
  const ahead = {
    coldNights: coldNightsIn(year, weather),
    hardDays: hardDaysIn(year, weather),
    spells: spellsIn(year, weather),
  };
  const events = yearEvents(year, ahead);
  const keys = new Set(events.map(({ key }) => key));
  const { scheduled } = year;
  return { year, scheduled, events, publishedState: publishedStateOf(scheduled, keys) };
}
