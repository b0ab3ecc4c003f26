import { type Problem, sortProblems } from "../../base/index.ts";
import { plantingsIn, type Year } from "../year.ts";
import { overlapDoubts } from "./crowding.ts";
import { netDoubts } from "./nets.ts";

/**
 * The doubts about the beds of a garden once its year is built: `bed-crowded` and `net-over-hosts`, file by file in the
 * order of the plans, each file by line. Empty where all have room and no net traps pests.
 */
export function bedDoubts(year: Year): readonly Problem[] {
  const doubts = [...overlapDoubts(year.plans, plantingsIn(year)), ...netDoubts(year.plans)];
  const files = [...new Set(year.plans.map(({ file }) => file))];
  return files.flatMap((file) => sortProblems(doubts.filter(({ at }) => at.file === file)));
}
