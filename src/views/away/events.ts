import { type Day, isoOf, plus } from "../../base/index.ts";
import type { Year } from "../../engine/index.ts";
import { EVENING_BEFORE, type Event } from "../events/event.ts";
import { eventFor } from "../events/event-for.ts";
import type { AwayListName } from "./lists.ts";
import { type AwayReport, awayReports } from "./report.ts";
import { awayTexts } from "./texts.ts";

/** The texts that have a day of their own. */
const LISTS: readonly AwayListName[] = ["before", "neighbour", "back"];

/** The day before they go, or the day after they are back. */
const dayOf = (list: AwayListName, { leave }: AwayReport): Day =>
  list === "back" ? plus(leave.to, 1) : plus(leave.from, -1);

/**
 * The events of absences, for the household only and for those who go: before you go and the neighbour's list on the
 * day before, when you're back on the day after. For every absence that is not over on `day`; in the plans' order.
 */
export function awayEvents(year: Year, day: Day): readonly Event[] {
  return year.plans.flatMap((plan) =>
    awayReports(plan, year, { person: null, today: day }).flatMap((report) =>
      awayTexts(report, plan, year.scheduled, LISTS).map(({ list, title, text }) => {
        const on = dayOf(list, report);
        const { from, to, away } = report.leave;
        const everybody = away.length === plan.people.length;
        const event = eventFor([], {
          key: `${plan.year}/garden/away/${isoOf(from)}/${isoOf(to)}/${list}`,
          set: "sessions",
          kind: "away",
          title,
          text,
          readerText: "",
          when: { kind: "all day", day: on },
          day: on,
          busy: false,
          remindMinutesBefore: EVENING_BEFORE,
        });
        return everybody ? event : { ...event, people: [...away].sort() };
      }),
    ),
  );
}
