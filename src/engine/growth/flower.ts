import { plus } from "../../base/index.ts";
import { isReached, type Milestone, middle, milestoneAfter, seenMilestone } from "./milestones.ts";
import { postponed } from "./postponed.ts";
import { ripeMilestone } from "./ripe.ts";
import { anchorOf, inPlace, type SowingContext } from "./sowing-context.ts";

/**
 * Days in its place after which a crop that never ripens here may flower all the same. Source: house rule, on the early
 * side.
 */
const UNRIPE_DAYS = [28, 42] as const;

/**
 * When it first flowers, counted back from its first harvest; a sighting replaces it. None where no task depends on its
 * flowers, and before it is in its place.
 */
export function flowerMilestone(context: SowingContext): Milestone {
  return postponed(context, "flower", flowerOf(context));
}

function flowerOf(context: SowingContext): Milestone {
  const seen = anchorOf(context, "flower");
  if (seen) return seenMilestone(seen.day);
  const { flowers } = context.crop;
  if (!flowers) return { none: "its flowers do not matter here" };
  const ripe = ripeMilestone(context);
  const anchor = inPlace(context);
  if (!isReached(ripe))
    return anchor ? milestoneAfter(anchor.day, UNRIPE_DAYS, anchor.basis) : { none: ripe.none };
  const [least, most] = flowers.daysBeforeHarvest.value;
  return {
    early: plus(ripe.early, -most),
    usual: plus(ripe.usual, -middle([least, most])),
    late: plus(ripe.late, -least),
    basis: ripe.basis,
    seen: false,
  };
}
