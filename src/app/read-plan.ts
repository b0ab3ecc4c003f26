import { sortProblems } from "../base/problems/problem.ts";
import { doubtsOf } from "../engine/doubts/doubts.ts";
import { type PlanResult, type PlanSource, readPlan } from "../garden/plan/read.ts";

export { readPlan } from "../garden/plan/read.ts";

/** A plan's text read as readPlan does, with what a grower would doubt in it; problems and doubts in reading order. */
export function readPlanWithDoubts(text: string, at: PlanSource): PlanResult {
  const { plan, problems } = readPlan(text, at);
  return plan === null
    ? { plan, problems }
    : { plan, problems: sortProblems([...problems, ...doubtsOf([plan])]) };
}
