import { inOrder, type Problem } from "../../base/problems/problem.ts";
import { grownOf, type Season } from "./lives.ts";
import { overlapDoubts } from "./overlaps.ts";
import { netDoubts } from "./trapped.ts";

/**
 * What is doubtful in the beds of a garden once its year is placed: `bed-crowded` and `net-over-hosts`, file by file
 * in the order of the plans, each file by line. Empty where all have room and no net traps anything.
 */
export function bedDoubts(season: Season): readonly Problem[] {
  const told = [...overlapDoubts(season.plans, grownOf(season)), ...netDoubts(season.plans)];
  const files = [...new Set(season.plans.map(({ file }) => file))];
  return files.flatMap((file) => inOrder(told.filter(({ at }) => at.file === file)));
}
