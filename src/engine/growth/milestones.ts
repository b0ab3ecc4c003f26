import { type Day, plus } from "../../base/days/day.ts";
import type { Range } from "../../crops/facts.ts";
import type { Ground } from "./anchors.ts";

/** When a stage is reached, early ≤ usual ≤ late, with what it hangs on; or none, with the reason in a clause. */
export type Milestone =
  | {
      readonly early: Day;
      readonly usual: Day;
      readonly late: Day;
      readonly grounds: readonly Ground[];
      /** Seen, and so no longer reckoned. */
      readonly seen: boolean;
    }
  | { readonly none: string };

/** A milestone that has its days. */
export type Reached = Exclude<Milestone, { readonly none: string }>;

/** Whether a milestone has a day. */
export function reached(milestone: Milestone): milestone is Reached {
  return "usual" in milestone;
}

/** The middle of a range, to the whole day. */
export function middle([least, most]: Range): number {
  return Math.round((least + most) / 2);
}

/** What was seen on a day, whatever was reckoned. */
export function seenOn(day: Day): Milestone {
  return { early: day, usual: day, late: day, grounds: ["seen"], seen: true };
}

/** The one day that an act falls on, or a frost usually does. */
export function onDay(day: Day, grounds: readonly Ground[]): Reached {
  return { early: day, usual: day, late: day, grounds, seen: false };
}

/** Days from a day on: the least, the middle and the most of a range. */
export function daysOn(day: Day, range: Range, grounds: readonly Ground[]): Milestone {
  return {
    early: plus(day, range[0]),
    usual: plus(day, middle(range)),
    late: plus(day, range[1]),
    grounds,
    seen: false,
  };
}
