import type { Day } from "../../base/days/day.ts";
import type { FrostDates, Plan } from "../../garden/model/plan.ts";
import { sameDay, seasonOf } from "../../garden/model/season.ts";
import { planOn } from "../schedule/horizon.ts";

/**
 * The plan in whose season a day falls; where none is written for that season yet, or any more, the nearest one with its
 * year and frosts moved by whole years and nothing planted. Plans in year order, not empty.
 */
export function yearOf(plans: readonly Plan[], day: Day): Plan {
  const plan = planOn(plans, day);
  const { from, to } = seasonOf(plan);
  if (from <= day && day <= to) return plan;
  const step = day > to ? 1 : -1;
  let years = step;
  while (step * (day - sameDay(step > 0 ? to : from, years)) > 0) years += step;
  return moved(plan, years);
}

function moved(plan: Plan, years: number): Plan {
  const { site } = plan;
  const dates = (frost: FrostDates | null) =>
    frost && {
      ...frost,
      early: sameDay(frost.early, years),
      usual: sameDay(frost.usual, years),
      late: sameDay(frost.late, years),
    };
  return {
    ...plan,
    year: plan.year + years,
    plantings: [],
    site: {
      ...site,
      lastFrost: dates(site.lastFrost),
      firstFrost: dates(site.firstFrost),
      killingFrost: dates(site.killingFrost),
    },
  };
}
