import type { Day } from "../base/index.ts";
import { buildYear, horizonOf } from "../engine/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { type ReviewedYear, type YearReport, yearPage, yearReport } from "../views/index.ts";
import type { Year } from "./build.ts";

export type { ReviewedYear } from "../views/index.ts";

/** Which of the year's plans is looked back on, and the day that is in the garden's zone. */
export type ReviewRequest = { readonly plan: Plan; readonly today: Day };

/** The season of a plan as it went, beside the one that was planned before its diary was begun, which costs a build. */
export function reviewYear(
  year: ReviewedYear & Pick<Year, "baseline">,
  { plan, today }: ReviewRequest,
): YearReport {
  const { baseline } = year;
  const plans = year.plans.map((each) => (each.year < plan.year ? each : { ...each, diary: [] }));
  const planned = buildYear({ id: plan.garden, plans, baseline }, horizonOf(plans, 0), {});
  return yearReport({ year, planned, plan, today });
}

/** The same as one page of HTML. */
export function yearReviewPage(
  year: ReviewedYear & Pick<Year, "baseline">,
  request: ReviewRequest,
): string {
  return yearPage(reviewYear(year, request));
}
