import type { Day } from "../../base/index.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { COVER } from "../practices/cover.ts";
import { coversOf } from "../practices/cover-periods.ts";
import type { ScheduledTask } from "../schedule/scheduled-task.ts";
import type { CoverSpan } from "./planting-record.ts";

/**
 * What lies over a planting and when, by its first sowing: on and off on the days that the schedule or the diary has for
 * them. None of what is left out this year; nor, where jobs stay open until they are done, of what nobody has put on.
 */
export function coverSpansOf(
  context: SowingContext,
  tasks: readonly ScheduledTask[],
): readonly CoverSpan[] {
  const { assume } = context.plan;
  const dayOf = (step: string): Day | null => {
    const found = tasks.find(({ task }) => task.practice === COVER.name && task.step === step);
    if (!found || (assume === "open" && !found.done)) return null;
    return found.done?.day ?? found.day;
  };
  return coversOf(context).flatMap(({ thing, suffix, off }) => {
    const from = context.planting.inSince ?? dayOf(`on${suffix}`);
    if (from === null) return [];
    return [{ thing, from, to: dayOf(`off${suffix}`) ?? off?.window.due ?? null }];
  });
}
