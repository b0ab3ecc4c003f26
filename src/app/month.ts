import type { Day } from "../base/index.ts";
import { monthPage, monthSheet } from "../views/index.ts";
import type { Schedule, Year } from "./build.ts";

/** Which month by any of its days, whose sheet by the person's key (null: the household's), and the day it is printed. */
export type MonthRequest = {
  readonly month: Day;
  readonly person: string | null;
  readonly today: Day;
};

/**
 * What a month's sheet shows: the plans, the year's events in the order of the schedule, and of its tasks at least those in
 * events of that month.
 */
export type MonthJobs = Pick<Year, "plans" | "scheduled"> & Pick<Schedule, "events">;

/** A month's jobs on paper, as one page of HTML. */
export function month({ plans, scheduled, events }: MonthJobs, request: MonthRequest): string {
  return monthPage(monthSheet({ plans, scheduled, events, ...request }));
}
