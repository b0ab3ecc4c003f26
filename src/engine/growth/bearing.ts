import { type Day, plus } from "../../base/days/day.ts";
import { autumnAfter } from "./ending.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";

/**
 * The day a sowing is over of itself: it has borne for as long as its kind does, or kept as long as it may; null where it
 * bears till frost, where frost may come first (one autumn in ten), and where it does not get ready.
 */
export function naturalEndOf(context: SowingContext): Day | null {
  const { kind, bearsDays, holdsDays } = context.crop.harvest;
  const ripe = ripeMilestone(context);
  if (!isReached(ripe) || (kind === "again and again" && bearsDays === null)) return null;
  const over = plus(ripe.usual, bearsDays?.value[1] ?? holdsDays.value);
  const autumn = autumnAfter(context, ripe.usual);
  return autumn === null || over < autumn.early ? over : null;
}
