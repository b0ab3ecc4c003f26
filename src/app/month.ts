import type { Day } from "../base/index.ts";
import { monthPage, monthSheet } from "../views/index.ts";
import type { Schedule } from "./build.ts";

/** Which month by any of its days, whose sheet by the person's key (null: the household's), and the day it is printed. */
export type MonthRequest = {
  readonly month: Day;
  readonly person: string | null;
  readonly today: Day;
};

/** A month's jobs on paper, as one page of HTML. */
export function month(
  { year, events }: Pick<Schedule, "year" | "events">,
  request: MonthRequest,
): string {
  const { plans, scheduled } = year;
  return monthPage(monthSheet({ plans, scheduled, events, ...request }));
}
