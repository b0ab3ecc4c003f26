import { buildYear } from "../engine/build.ts";
import { type Horizon, horizonOf } from "../engine/schedule/horizon.ts";
import { publishedStateOf } from "../engine/schedule/published-state.ts";
import type { PublishedState, ScheduledTask } from "../engine/schedule/scheduled-task.ts";
import type { Garden, Year } from "../engine/year.ts";
import type { Event } from "../views/events/event.ts";
import { yearEvents } from "../views/year-events.ts";

export { buildBaseline } from "../engine/build.ts";
export type { Horizon } from "../engine/schedule/horizon.ts";
export type { Baseline, Garden } from "../engine/year.ts";

/** What a garden is scheduled as: its year, the events made of it, and what to remember for the next time. */
export type Schedule = {
  readonly year: Year;
  readonly scheduled: readonly ScheduledTask[];
  readonly events: readonly Event[];
  readonly publishedState: PublishedState;
};

/** Today as the core knows it, at an instant [ms since 1970 UTC], in the garden's own zone. */
export function horizonAt(garden: Garden, instant: number): Horizon {
  return horizonOf(garden.plans, instant);
}

/** The garden's year, its events, and what has been published once they are. */
export function buildSchedule(
  garden: Garden,
  horizon: Horizon,
  publishedState: PublishedState,
): Schedule {
  const year = buildYear(garden, horizon, publishedState);
  const events = yearEvents(year);
  const { scheduled } = year;
  return {
    year,
    scheduled,
    events,
    publishedState: publishedStateOf(scheduled, new Set(events.map(({ key }) => key))),
  };
}
