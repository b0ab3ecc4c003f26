import type { ScheduledTask } from "../schedule/scheduled-task.ts";
import type { HardeningStep } from "./planting-record.ts";

/** Steps that carry trays out, with the number of a later sowing before them or without. */
const OUT = /(?:^|-)out-\d+$/;

/** The steps of hardening off among a planting's tasks that take its trays out, in their order; hardy plants stay out from theirs on. */
export function hardeningSteps(tasks: readonly ScheduledTask[]): readonly HardeningStep[] {
  return tasks.flatMap(({ task: { practice, step, timed }, day }) => {
    if (practice !== "harden off" || (timed !== null && !OUT.test(step))) return [];
    const overnight = timed ? timed.lasts === 0 : step.endsWith("nights");
    return [{ day, out: overnight ? "out overnight" : "out by day", stays: timed === null }];
  });
}
