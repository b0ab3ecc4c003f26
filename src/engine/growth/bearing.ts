import { type Day, plus } from "../../base/index.ts";
import { autumnAfter } from "./autumn.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";
import { winterEndOf } from "./through-winter.ts";

/**
 * The day a sowing ends by itself: it has borne for its time, or kept as long as it can; null where it bears until
 * frost, where frost may come first (one autumn in ten), and where it does not ripen.
 */
export function naturalEndOf(context: SowingContext): Day | null {
  const { kind, bearsDays, holdsDays } = context.crop.harvest;
  const ripe = ripeMilestone(context);
  if (!isReached(ripe)) return null;
  const winter = winterEndOf(context, ripe.usual);
  if (winter) return winter.day;
  if (kind === "again and again" && bearsDays === null) return null;
  const over = plus(ripe.usual, bearsDays?.value[1] ?? holdsDays.value);
  const autumn = autumnAfter(context, ripe.usual);
  return autumn === null || over < autumn.early ? over : null;
}
