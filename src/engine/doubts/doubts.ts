import { type Problem, sortProblems } from "../../base/problems/problem.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { familyDoubts } from "./families.ts";
import { bedSizeDoubts, repeatDoubts } from "./plantings.ts";
import { seasonDoubts } from "./season.ts";

/**
 * What a grower would doubt in the plans of a garden, before anything is scheduled and without the diary: plantings too
 * many for their bed, sown again where that cannot be, of a family that its bed had too lately, or against the season.
 * In reading order, by line; the plans of several years in their order where lines are the same.
 */
export function doubtsOf(plans: readonly Plan[]): readonly Problem[] {
  return sortProblems([
    ...plans.flatMap((plan) => [
      ...bedSizeDoubts(plan),
      ...repeatDoubts(plan),
      ...seasonDoubts(plan),
    ]),
    ...familyDoubts(plans),
  ]);
}
