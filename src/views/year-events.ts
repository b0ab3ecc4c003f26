import type { ColdNight, HardDay, Spell, Year } from "../engine/index.ts";
import { wholeGarden } from "../garden/model/index.ts";
import { awayEvents } from "./away/events.ts";
import type { Event } from "./events/event.ts";
import { eventsOf } from "./events/events.ts";
import { frostNightEvents } from "./events/frost-nights.ts";
import { whereTold } from "./events/grouping.ts";
import { hardDayEvents } from "./events/hard-days.ts";
import { seasonEvent } from "./events/open.ts";
import { spellEvents } from "./events/spells.ts";

/** What the forecast asks for in the days ahead; nothing where nobody is asked. */
export type DaysAhead = {
  readonly coldNights: readonly ColdNight[];
  readonly hardDays: readonly HardDay[];
  readonly spells: readonly Spell[];
};

/**
 * All events that a year's feeds are chosen from, from the horizon's first day on: jobs, absences, cold nights, hard days and spells ahead,
 * and the season's own line. In no particular order.
 */
export function yearEvents(
  year: Year,
  { coldNights, hardDays, spells }: DaysAhead,
): readonly Event[] {
  const { horizon, published: publishedState } = year;
  const shown = year.scheduled.map(whereTold).filter(({ day }) => day >= horizon.firstDay);
  const plan = wholeGarden(year.plans);
  return [
    ...eventsOf(shown, { plan, publishedState, openDays: horizon.openDays }),
    ...awayEvents(year, horizon.firstDay),
    ...frostNightEvents(year.plans, coldNights),
    ...hardDayEvents(year.plans, hardDays),
    ...spellEvents(year.plans, spells),
    seasonEvent(plan, horizon.firstDay),
  ];
}
