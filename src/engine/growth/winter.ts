import { type Day, plus } from "../../base/days/day.ts";
import type { Range } from "../../crops/facts.ts";
import type { Growing } from "./growing.ts";
import { daysOn, type Milestone } from "./milestones.ts";

/** Days after the last frost of the spring that follows a day, for what stands the winter. */
export function afterWinter(growing: Growing, planted: Day, range: Range): Milestone {
  const frost = growing.plan.site.lastFrost;
  if (!frost) return { none: "there is no last frost to count from" };
  return daysOn(nextYearly(frost.usual, planted), range, ["last frost"]);
}

/** The first day after `from` that is a whole number of years from `day`. */
export function nextYearly(day: Day, from: Day): Day {
  const years = Math.ceil((from + 1 - day) / 365.25);
  return plus(day, years * 365.25);
}
