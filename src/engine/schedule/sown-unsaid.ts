import { type Day, plus } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import { UP_AFTER_DAYS } from "../growth/diary-anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { sownFor } from "../growth/up.ts";
import type { Task } from "../practices/all.ts";
import type { Window } from "../practices/task.ts";
import type { Household } from "./household.ts";
import type { DoneTasks } from "./schedule-tasks.ts";

/** Days before its due day by which a row may be up and still be the one that is meant. Source: house rule; longer ago it is last year's. */
const UP_EARLY_DAYS = 45;

/** Whether a start cannot be still to come where green was seen on a day, and is near enough to be what came up. */
function isOvertaken({ window }: Task, up: Day, household: Household): boolean {
  if (window.due > plus(up, UP_EARLY_DAYS)) return false;
  return window.due > plus(up, -UP_AFTER_DAYS) || isPutOff(window, up, household);
}

/** Whether nobody works in the garden from its day until it must have been in, so that it would be told for a day after it was up. */
function isPutOff({ due, latest: last }: Window, up: Day, household: Household): boolean {
  if (last < up) return false;
  for (let day = due; day <= plus(up, -UP_AFTER_DAYS); day = plus(day, 1))
    if (isWorkedOn(household, day)) return false;
  return true;
}

const isWorkedOn = ({ people, gardening, hasHours, about, around }: Household, day: Day) =>
  people.length === 0
    ? around(day)
    : people.some((each) => (hasHours(each) ? gardening(each, day).length > 0 : about(each, day)));

/**
 * What is done, with the starts of which the diary never says that they are but says that they are up: what is up was sown,
 * as long before as seed took to come up. Without a number it is the first sowing.
 */
export function withSownUnsaid(
  done: DoneTasks,
  tasks: readonly Task[],
  {
    observations,
    contexts,
    household,
  }: {
    readonly observations: readonly Observation[];
    readonly contexts: readonly SowingContext[];
    readonly household: Household;
  },
): DoneTasks {
  const more = new Map(done);
  for (const observation of observations) {
    if (observation.kind !== "seen" || observation.stage !== "up") continue;
    const { planting, day } = observation;
    const number = observation.sowing ?? 1;
    const start = tasks.find(
      ({ sets }) => sets?.act === "start" && sets.planting === planting && sets.sowing === number,
    );
    const context = contexts.find(
      (each) => each.planting.key === planting && each.sowing === number,
    );
    if (!start || !context || more.has(start.id) || !isOvertaken(start, day, household)) continue;
    more.set(start.id, { day: sownFor(context, day), by: null });
  }
  return more;
}
