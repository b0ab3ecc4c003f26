import type { Day } from "../base/days/day.ts";
import { buildBaseline, buildYear } from "../engine/build.ts";
import { horizonOf } from "../engine/schedule/horizon.ts";
import type { Garden } from "../engine/year.ts";
import type { Plan } from "../garden/model/plan.ts";
import { type YearReport, yearReport } from "../views/paper/year.ts";
import { yearPage } from "../views/paper/year-page.ts";

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
