import type { Day } from "../base/index.ts";
import { buildBaseline, buildYear, type Garden, horizonOf } from "../engine/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { type YearReport, yearPage, yearReport } from "../views/index.ts";

/** Which of the garden's plans is looked back on, at which instant [ms since 1970 UTC], and the day that is in the garden's zone. */
export type ReviewRequest = {
  readonly plan: Plan;
  readonly instant: number;
  readonly today: Day;
};

/** The season of a plan as it went, beside the one that was planned before its diary was begun. */
export function reviewYear(garden: Garden, { plan, instant, today }: ReviewRequest): YearReport {
  const horizon = horizonOf(garden.plans, instant);
  const baseline = garden.baseline ?? buildBaseline(garden);
  const year = buildYear({ ...garden, baseline }, horizon, {});
  const undone = garden.plans.map((each) =>
    each.year < plan.year ? each : { ...each, diary: [] },
  );
  const planned = buildYear({ ...garden, plans: undone, baseline }, horizon, {});
  return yearReport({ year, planned, plan, today });
}

/** The same as one page of HTML. */
export function yearReviewPage(garden: Garden, request: ReviewRequest): string {
  return yearPage(reviewYear(garden, request));
}
