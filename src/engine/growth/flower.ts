import { plus } from "../../base/days/day.ts";
import { anchorOf, type Growing, inPlace } from "./growing.ts";
import { daysOn, type Milestone, middle, reached, seenOn } from "./milestones.ts";
import { heldBack } from "./not-yet.ts";
import { ripeMilestone } from "./ripe.ts";

/** Weeks in its place after which what never ripens here may flower all the same [days]. Source: house rule, on the early side. */
const UNRIPE_DAYS = [28, 42] as const;

/**
 * When it first flowers, counted back from its first harvest; what was seen replaces it. None where its flowers matter
 * to nothing that is done, and before it is in its place.
 */
export function flowerMilestone(growing: Growing): Milestone {
  return heldBack(growing, "flower", flowerOf(growing));
}

function flowerOf(growing: Growing): Milestone {
  const seen = anchorOf(growing, "flower");
  if (seen) return seenOn(seen.day);
  const { flowers } = growing.crop;
  if (!flowers) return { none: "its flowers do not matter here" };
  const ripe = ripeMilestone(growing);
  const placed = inPlace(growing);
  if (!reached(ripe))
    return placed ? daysOn(placed.day, UNRIPE_DAYS, placed.grounds) : { none: ripe.none };
  const [least, most] = flowers.daysBeforeHarvest.value;
  return {
    early: plus(ripe.early, -most),
    usual: plus(ripe.usual, -middle([least, most])),
    late: plus(ripe.late, -least),
    grounds: ripe.grounds,
    seen: false,
  };
}
