import { type Day, plus } from "../../base/index.ts";
import type { NumberRange } from "../../crops/index.ts";
import type { Basis } from "./anchors.ts";

/** When a stage is reached, early ≤ usual ≤ late, with what it depends on; or none, with the reason in a clause. */
export type Milestone =
  | {
      readonly early: Day;
      readonly usual: Day;
      readonly late: Day;
      readonly basis: readonly Basis[];
      /** Seen, and so no longer calculated. */
      readonly seen: boolean;
    }
  | { readonly none: string };

/** A milestone that has its days. */
export type ReachedMilestone = Exclude<Milestone, { readonly none: string }>;

/** Whether a milestone has a day. */
export function isReached(milestone: Milestone): milestone is ReachedMilestone {
  return "usual" in milestone;
}

/** The middle of a range, to the whole day. */
export function middle([least, most]: NumberRange): number {
  return Math.round((least + most) / 2);
}

/** A milestone that was seen on a day. */
export function seenMilestone(day: Day): Milestone {
  return { early: day, usual: day, late: day, basis: ["seen"], seen: true };
}

/** The one day that an act falls on, or a frost usually does. */
export function milestoneOn(day: Day, basis: readonly Basis[]): ReachedMilestone {
  return { early: day, usual: day, late: day, basis, seen: false };
}

/** Days from a day on: the least, the middle and the most of a range. */
export function milestoneAfter(day: Day, range: NumberRange, basis: readonly Basis[]): Milestone {
  return {
    early: plus(day, range[0]),
    usual: plus(day, middle(range)),
    late: plus(day, range[1]),
    basis,
    seen: false,
  };
}
