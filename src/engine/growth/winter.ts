import { type Day, plus } from "../../base/index.ts";
import type { NumberRange } from "../../crops/index.ts";
import { type Milestone, milestoneAfter } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";

/** Days after the last frost of the next spring, for crops that overwinter. */
export function afterWinter(context: SowingContext, planted: Day, range: NumberRange): Milestone {
  const frost = context.plan.site.lastFrost;
  if (!frost) return { none: "there is no last frost to count from" };
  return milestoneAfter(nextAnniversary(frost.usual, planted), range, ["last frost"]);
}

/** The first day after `from` that is a whole number of years from `day`. */
export function nextAnniversary(day: Day, from: Day): Day {
  const years = Math.ceil((from + 1 - day) / 365.25);
  return plus(day, years * 365.25);
}
