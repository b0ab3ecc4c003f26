import { type Problem, sortProblems } from "../../base/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bulbDoubts } from "./bulbs.ts";
import { familyDoubts } from "./families.ts";
import { bedSizeDoubts, repeatDoubts } from "./plantings.ts";
import { seasonDoubts } from "./season.ts";

/**
 * What a grower would doubt in the plans of a garden, before anything is scheduled and without the diary: plantings too
 * large for their bed, sown again where that is not possible, of a family that was in its bed too recently, or against
 * the season. In reading order, by line; the plans of several years in their order where lines are the same.
 */
export function doubtsOf(plans: readonly Plan[]): readonly Problem[] {
  return sortProblems([
    ...plans.flatMap((plan) => [
      ...bedSizeDoubts(plan),
      ...repeatDoubts(plan),
      ...seasonDoubts(plan),
      ...bulbDoubts(plan),
    ]),
    ...familyDoubts(plans),
  ]);
}
