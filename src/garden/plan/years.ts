import { type Problem, sortProblems } from "../../base/index.ts";
import type { Plan, Planting } from "../model/plan.ts";
import { newestCalled } from "../model/years.ts";
import { diagnostic } from "./codes.ts";

/**
 * What does not fit together in the years' plans of one garden, whatever their order; file by file in year order.
 * Problem: `key-clash`, two files of one year, whose plantings would share their keys. Doubts: `after-unknown`,
 * a planting to follow that no year has; `in-twice`. Empty for one plan that follows nothing of another.
 */
export function problemsBetweenYears(plans: readonly Plan[]): readonly Problem[] {
  const sorted = [...plans].sort((a, b) => a.year - b.year);
  return sorted.flatMap((plan, index) => {
    const before = sorted.slice(0, index).filter(({ year }) => year < plan.year);
    const twin = sorted.slice(0, index).find(({ year }) => year === plan.year);
    const last = before.find(({ year }) => year === plan.year - 1);
    return sortProblems([
      ...(twin ? [clash(plan, twin)] : []),
      ...plan.plantings.flatMap((planting) => afterDoubt(planting, before)),
      ...(last ? plan.plantings.flatMap((planting) => inTwiceDoubt(planting, last)) : []),
    ]);
  });
}

function clash(plan: Plan, twin: Plan): Problem {
  return diagnostic(
    "key-clash",
    { file: plan.file, line: 1, column: 1 },
    `This is a second plan of ${plan.year}, beside ${twin.file}`,
    "Keep one file a year, or correct its year",
  );
}

function afterDoubt(planting: Planting, before: readonly Plan[]): readonly Problem[] {
  const { after, at, written } = planting;
  if (after === null || after.includes("/") || newestCalled(after, before)) return [];
  return [
    diagnostic(
      "after-unknown",
      at,
      `${written} comes after ${after.replaceAll("-", " ")}, which no year's plan holds`,
      "Write the name of a planting of this plan or of an earlier year",
    ),
  ];
}

/** A planting belongs to the plan of the year it went in, which has its tasks to its end. */
function inTwiceDoubt(planting: Planting, last: Plan): readonly Problem[] {
  const twin = last.plantings.find(
    (other) => other.crop === planting.crop && other.inSince === null && other.bed === planting.bed,
  );
  if (planting.inSince === null || !twin) return [];
  return [
    diagnostic(
      "in-twice",
      planting.at,
      `${planting.written} is in since last year, and ${last.file} plants it already`,
      "Leave it out here: last year's plan tells it to its end",
    ),
  ];
}
