import { type Problem, sortProblems } from "../../base/problems/problem.ts";
import { cropFor } from "../../crops/crops.ts";
import type { Plan, Planting } from "../model/plan.ts";
import { plantingsNamed } from "./after.ts";
import { diagnostic } from "./codes.ts";
import { familyBefore, yearsAway } from "./families.ts";

/**
 * What is wrong or doubtful between the years' plans of one garden, whatever their order; file by file in year order.
 * Problem: `key-clash`, two files of one year, whose plantings would share their keys. Doubts: `after-unknown`,
 * a planting to follow that no year holds; `family-too-soon`; `in-twice`. Empty for one plan that follows nothing of another.
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
      ...plan.plantings.flatMap((planting) => familyDoubt(planting, plan, before)),
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

/**
 * The planting that one follows, in its own year's plan or, where that holds none, in the newest earlier one that
 * has exactly one of that name; null where it follows none, or none is found.
 */
export function predecessorOf(planting: Planting, plans: readonly Plan[]): Planting | null {
  const { after } = planting;
  if (after === null) return null;
  const all = plans.flatMap(({ plantings }) => plantings);
  const known = all.find(({ key }) => key === after);
  if (known) return known;
  const own = plans.find(({ plantings }) => plantings.some(({ key }) => key === planting.key));
  const before = plans.filter(({ year }) => year < (own?.year ?? Number.POSITIVE_INFINITY));
  return inNewest(after, before);
}

function inNewest(name: string, plans: readonly Plan[]): Planting | null {
  const newestFirst = [...plans].sort((a, b) => b.year - a.year);
  const fitting = newestFirst
    .map(({ plantings }) => plantingsNamed(name.replaceAll("-", " "), plantings))
    .find((found) => found.length > 0);
  return fitting?.length === 1 ? (fitting[0] ?? null) : null;
}

function afterDoubt(planting: Planting, before: readonly Plan[]): readonly Problem[] {
  const { after, at, written } = planting;
  if (after === null || after.includes("/") || inNewest(after, before)) return [];
  return [
    diagnostic(
      "after-unknown",
      at,
      `${written} comes after ${after.replaceAll("-", " ")}, which no year's plan holds`,
      "Write the name of a planting of this plan or of an earlier year",
    ),
  ];
}

/** A planting belongs to the plan it went in by, which tells it to its end. */
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

/** What stands over from last year is last year's own, and what stands for years stays. */
function familyDoubt(planting: Planting, plan: Plan, before: readonly Plan[]): readonly Problem[] {
  const crop = cropFor(planting);
  const bed = plan.beds.find(({ key }) => key === planting.bed);
  if (!crop || crop.perennial || !bed || planting.inSince !== null) return [];
  const had = familyBefore(crop, bed, { year: plan.year, before });
  if (!had) return [];
  const when = had.plan.year === plan.year - 1 ? "last year" : `in ${had.plan.year}`;
  const away = yearsAway(crop.family).value;
  const free = away === 1 ? "a year" : `${away} years`;
  return [
    diagnostic(
      "family-too-soon",
      planting.at,
      `${bed.name} had ${had.planting.written} ${when} (${had.plan.file}, line ${had.planting.at.line}), and ${planting.written} is of the ${crop.family} too`,
      `Give it another bed: ${free} without that family, and its pests and diseases die out`,
    ),
  ];
}

/** Plans in which each planting that follows one of an earlier year names it by its key. */
export function withLinkedPlantings(plans: readonly Plan[]): readonly Plan[] {
  const named = (planting: Planting) =>
    planting.after === null
      ? planting
      : { ...planting, after: predecessorOf(planting, plans)?.key ?? planting.after };
  return plans.map((plan) => ({ ...plan, plantings: plan.plantings.map(named) }));
}

/** The newest plan with every year's beds and people, for words that name them. Plans in year order, not empty. */
export function wholeGarden(plans: readonly Plan[]): Plan {
  const newest = plans[plans.length - 1];
  if (!newest) throw new RangeError("a garden has a plan");
  const byKey = <T extends { readonly key: string }>(all: readonly T[]) => [
    ...new Map(all.map((each) => [each.key, each])).values(),
  ];
  return {
    ...newest,
    beds: byKey(plans.flatMap((plan) => plan.beds)),
    people: byKey(plans.flatMap((plan) => plan.people)),
  };
}
