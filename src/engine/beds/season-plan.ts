import type { Day } from "../../base/index.ts";
import {
  type FrostDates,
  type Plan,
  planOn,
  plusYears,
  seasonOf,
} from "../../garden/model/index.ts";

/**
 * The plan in whose season a day falls; where there is no plan for that season, the nearest one with its year and
 * frosts moved by whole years and nothing planted. Plans in year order, not empty.
 */
export function seasonPlanOn(plans: readonly Plan[], day: Day): Plan {
  const plan = planOn(plans, day);
  const { from, to } = seasonOf(plan);
  if (from <= day && day <= to) return plan;
  const step = day > to ? 1 : -1;
  let years = step;
  while (step * (day - plusYears(step > 0 ? to : from, years)) > 0) years += step;
  return planMovedBy(plan, years);
}

function planMovedBy(plan: Plan, years: number): Plan {
  const { site } = plan;
  const dates = (frost: FrostDates | null) =>
    frost && {
      ...frost,
      early: plusYears(frost.early, years),
      usual: plusYears(frost.usual, years),
      late: plusYears(frost.late, years),
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
