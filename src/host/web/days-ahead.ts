import { chooseEvents, type Event } from "../../app/records.ts";
import { type Day, joinWords, plus, sayDay, shortWeekday } from "../../base/index.ts";
import { eventPath } from "../links/feeds.ts";
import { type EventRange, eventsBetween } from "../store/events.ts";
import { type GardenView, todayIn } from "./garden-request.ts";
import { hoursOf } from "./job-rows.ts";
import { householdOf } from "./link-offers.ts";
import type { DayAhead, DayJob } from "./pages/days.tsx";

/** Events of some days as the holder of the link may read them: one person's and everybody's, or the whole household's (null). The season's own line is not among them. */
export function chosenBetween(
  view: GardenView,
  range: EventRange,
  person: string | null,
): readonly Event[] {
  return chosenFrom(view, eventsBetween(view.context.sql, range), { set: range.set, person });
}

/** The same of events of one set that were read already. */
export function chosenFrom(
  { link }: Pick<GardenView, "link">,
  events: readonly Event[],
  { set, person }: Pick<EventRange, "set"> & { readonly person: string | null },
): readonly Event[] {
  const reader = link.role === "reader";
  const of = reader || person === null ? "household" : { person };
  const choice = { of, kind: set, bed: null, quiet: false, reader } as const;
  return chooseEvents(events, choice).filter(({ kind }) => kind !== "season");
}

/** The set of events that a link's days are told by. */
export function setOf({ link }: Pick<GardenView, "link">): EventRange["set"] {
  return link.role === "reader" ? "tasks" : "sessions";
}

const WEEK = 7;

/** The events of today and of the two weeks from tomorrow on, by the set that the link's days are told by. */
export function eventsSoon(view: GardenView): readonly Event[] {
  const today = todayIn(view);
  const range = { from: today, before: plus(today, 1 + 2 * WEEK), set: setOf(view) };
  return eventsBetween(view.context.sql, range);
}

/** The next seven days and the seven after, from tomorrow on, the whole household's. */
export function daysAhead(
  view: GardenView,
  soon: readonly Event[] = eventsSoon(view),
): readonly (readonly DayAhead[])[] {
  const first = plus(todayIn(view), 1);
  const events = chosenFrom(view, soon, { set: setOf(view), person: null });
  const week = (from: Day) =>
    Array.from({ length: WEEK }, (_, i) => dayAhead(view, plus(from, i), events));
  return [week(first), week(plus(first, WEEK))];
}

/** A day to come with those of some events that are its own. */
export function dayAhead(view: GardenView, day: Day, events: readonly Event[]): DayAhead {
  const jobs = events.filter((event) => event.day === day);
  return {
    ...{ weekday: shortWeekday(day), date: sayDay(day) },
    jobs: jobs.map((event) => dayJob(view, event)),
  };
}

/** An event in a line: at which hours, and whose it is where it is not one's own or everybody's. */
function dayJob(view: GardenView, event: Event): DayJob {
  const reader = view.link.role === "reader";
  return {
    title: event.title,
    href: reader ? null : `${view.base}${eventPath(event.key)}`,
    facts: reader ? [] : [hoursOf(view, event), whoseOf(view, event)].filter((fact) => fact !== ""),
  };
}

function whoseOf({ stored, link }: GardenView, { people }: Event): string {
  const household = householdOf(stored);
  const own = link.person !== null && people.includes(link.person);
  if (own || people.length === 0 || household.length < 2) return "";
  const names = new Map(household.map(({ key, name }) => [key, name]));
  return joinWords(people.map((key) => names.get(key) ?? key));
}
