import { type Day, plus } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import { UP_AFTER_DAYS } from "../growth/diary-anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { sownFor } from "../growth/up.ts";
import type { Task } from "../practices/all.ts";
import type { DoneTasks } from "./schedule-tasks.ts";

/** Days before its due day by which a row may be up and still be the one that is meant. Source: house rule; longer ago it is last year's. */
const UP_EARLY_DAYS = 45;

/** Whether a start cannot be still to come where green was seen on a day, and is near enough to be what came up. */
const isOvertaken = ({ window }: Task, up: Day) =>
  window.due > plus(up, -UP_AFTER_DAYS) && window.due <= plus(up, UP_EARLY_DAYS);

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
  }: {
    readonly observations: readonly Observation[];
    readonly contexts: readonly SowingContext[];
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
    if (!start || !context || more.has(start.id) || !isOvertaken(start, day)) continue;
    more.set(start.id, { day: sownFor(context, day), by: null });
  }
  return more;
}
