import { type Day, earliest, MONTHS, monthStart, partsOf, plus, sayDay } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
import { type Plan, planOn } from "../../garden/model/index.ts";
import { chooseEvents } from "../calendar/choose-events.ts";
import type { Event } from "../events/event.ts";
import { usualFrostText } from "../pictures/frost-text.ts";
import { awayLines } from "./away.ts";
import { openJobLines } from "./open-jobs.ts";
import { type SheetPerson, sheetPeople } from "./people.ts";
import { type SheetWeek, weeksOf } from "./weeks.ts";

/**
 * What a month's sheet is made from: the garden's schedule, whose sheet of which month it is, and the day it is read.
 */
export type MonthInput = {
  readonly plans: readonly Plan[];
  readonly scheduled: readonly ScheduledTask[];
  readonly events: readonly Event[];
  /** Any day of the month. */
  readonly month: Day;
  readonly today: Day;
  /** Key of a person; null: the household. */
  readonly person: string | null;
};

/** A month of the garden as on its sheet, without markup. */
export type MonthSheet = {
  readonly garden: string;
  /** `May 2027`. */
  readonly month: string;
  readonly today: Day;
  /** Whose sheet it is; null: the household's. */
  readonly person: SheetPerson | null;
  readonly people: readonly SheetPerson[];
  /** Notes for the whole month, a sentence each: the usual frosts, who is away. */
  readonly facts: readonly string[];
  /** Still to do from before, a line each; empty where nothing is. */
  readonly open: readonly string[];
  readonly weeks: readonly SheetWeek[];
  /** The first job after a month without any, `Order bulbs: second garlic, 28 Aug`, with its year where that is another; empty where there is none, and where the month has work. */
  readonly next: string;
};

/**
 * The jobs of a month as the feed of the same day has them, week by week, in walking order within a day. The more there
 * is to do, the shorter is each job; what is on the sheet once is not repeated.
 */
export function monthSheet(input: MonthInput): MonthSheet {
  const from = monthStart(input.month);
  const to = plus(monthStart(input.month, 1), -1);
  const plan = planOn(input.plans, input.month);
  const people = sheetPeople(input.plans);
  const all = chooseEvents(input.events, choiceOf(input.person)).filter(
    ({ kind }) => kind !== "season",
  );
  const events = all.filter(({ day }) => day >= from && day <= to);
  const { year, month } = partsOf(from);
  return {
    garden: plan.name,
    month: `${MONTHS[month - 1] ?? ""} ${year}`,
    today: input.today,
    person: people.find(({ key }) => key === input.person) ?? null,
    people,
    facts: [usualFrostText(plan), ...awayLines(input.plans, { from, to, person: input.person })],
    open: openJobLines(input, { from, to }),
    weeks: weeksOf(events, input, { from, to }),
    next: events.length > 0 ? "" : nextJobText(all, to),
  };
}

const choiceOf = (person: string | null) =>
  ({
    of: person === null ? "household" : { person },
    kind: "tasks",
    bed: null,
    quiet: true,
    reader: false,
  }) as const;

function nextJobText(events: readonly Event[], after: Day): string {
  const later = events.filter(({ day }) => day > after);
  const day = later.length === 0 ? null : earliest(...later.map((event) => event.day));
  const first = later.find((event) => event.day === day);
  return first
    ? `${first.title}, ${sayDay(first.day, partsOf(first.day).year !== partsOf(after).year)}`
    : "";
}
