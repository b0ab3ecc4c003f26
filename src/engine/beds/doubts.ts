import { type Problem, sortProblems } from "../../base/problems/problem.ts";
import { type GardenSeason, plantingLivesOf } from "./lives.ts";
import { netDoubts } from "./net-doubts.ts";
import { overlapDoubts } from "./overlaps.ts";

/**
 * What is doubtful in the beds of a garden once its year is placed: `bed-crowded` and `net-over-hosts`, file by file
 * in the order of the plans, each file by line. Empty where all have room and no net traps anything.
 */
export function bedDoubts(season: GardenSeason): readonly Problem[] {
  const doubts = [
    ...overlapDoubts(season.plans, plantingLivesOf(season)),
    ...netDoubts(season.plans),
  ];
  const files = [...new Set(season.plans.map(({ file }) => file))];
  return files.flatMap((file) => sortProblems(doubts.filter(({ at }) => at.file === file)));
}
