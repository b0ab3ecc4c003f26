import type { Day } from "../base/days/day.ts";
import { dayAt } from "../base/days/instants.ts";
import { buildYear } from "../engine/build.ts";
import { type Horizon, horizonOf } from "../engine/schedule/horizon.ts";
import { publishedStateOf } from "../engine/schedule/published-state.ts";
import type { PublishedState } from "../engine/schedule/scheduled-task.ts";
import type { Garden, Year } from "../engine/year.ts";
import { newestPlan } from "../garden/model/garden.ts";
import type { Event } from "../views/events/event.ts";
import { yearEvents } from "../views/year-events.ts";

export { buildBaseline, buildYear } from "../engine/build.ts";
export { type Horizon, planOn } from "../engine/schedule/horizon.ts";
export type { PublishedState, PublishedTask } from "../engine/schedule/scheduled-task.ts";
export type { Baseline, Garden, Year } from "../engine/year.ts";
export { newestPlan } from "../garden/model/garden.ts";
export { type TaskCard, taskCards } from "../views/cards.ts";

/** What a garden's feeds are written from: its year, the events made of it, and what has been published once they are. */
export type Schedule = Pick<Year, "scheduled"> & {
  readonly year: Year;
  readonly events: readonly Event[];
  readonly publishedState: PublishedState;
};

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
  const events = yearEvents(year);
  const keys = new Set(events.map(({ key }) => key));
  const { scheduled } = year;
  return { year, scheduled, events, publishedState: publishedStateOf(scheduled, keys) };
}
