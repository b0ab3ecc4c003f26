import type { Day } from "../base/index.ts";
import { buildYear, horizonOf } from "../engine/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { type ReviewedYear, type YearReport, yearPage, yearReport } from "../views/index.ts";
import type { Year, YearCourse } from "./build.ts";

export type { ReviewedYear } from "../views/index.ts";

/** Which of the year's plans is looked back on, its course as it was planned, and the day that is in the garden's zone. */
export type ReviewRequest = {
  readonly plan: Plan;
  readonly planned: YearCourse;
  readonly today: Day;
};

/** The season of a plan as it went, beside the one that was planned. */
export function reviewYear(year: ReviewedYear, request: ReviewRequest): YearReport {
  return yearReport({ year, ...request });
}

/** The same as one page of HTML. */
export function yearReviewPage(year: ReviewedYear, request: ReviewRequest): string {
  return yearPage(reviewYear(year, request));
}

/**
 * What was planned before the diary of that plan's year was begun. It costs a build, and depends on no day and on nothing that
 * was said over links.
 */
export function plannedCourse(
  { plans, baseline }: Pick<Year, "plans" | "baseline">,
  plan: Plan,
): YearCourse {
  const undone = plans.map((each) => (each.year < plan.year ? each : { ...each, diary: [] }));
  return buildYear({ id: plan.garden, plans: undone, baseline }, horizonOf(plans, 0), {});
}
