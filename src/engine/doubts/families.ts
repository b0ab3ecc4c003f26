import type { Problem } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { diagnostic } from "../../garden/index.ts";
import type { Plan, Planting } from "../../garden/model/index.ts";
import { type EarlierPlanting, familyBefore, yearsAway } from "../rules/families.ts";

/** `family-too-soon` at each planting whose bed had its family fewer years before than it should be away, in the order of the plans. */
export function familyDoubts(plans: readonly Plan[]): readonly Problem[] {
  return plans.flatMap((plan) => {
    const before = plans.filter(({ year }) => year < plan.year);
    return plan.plantings.flatMap((planting) => familyDoubt(planting, plan, before));
  });
}

/** How long ago a bed had something, from the year of a plan. */
function whenHad(year: number, now: number): string {
  if (year === now) return "this year";
  return year === now - 1 ? "last year" : `in ${year}`;
}

/** What stood in the bed this very year, before something of its family is set there in autumn for the next; null where nothing did. */
function standsThisYear(planting: Planting, plan: Plan): EarlierPlanting | null {
  const crop = cropFor(planting);
  if (!crop?.overwinter || plan.beds.find(({ key }) => key === planting.bed)?.kind === "bags")
    return null;
  const there = plan.plantings.find(
    (other) =>
      other !== planting &&
      other.bed === planting.bed &&
      other.inSince !== null &&
      cropFor(other)?.family === crop.family,
  );
  return there ? { planting: there, plan } : null;
}

/** A planting still there from last year belongs to last year's plan, and perennials stay where they are. */
function familyDoubt(planting: Planting, plan: Plan, before: readonly Plan[]): readonly Problem[] {
  const crop = cropFor(planting);
  const bed = plan.beds.find(({ key }) => key === planting.bed);
  if (!crop || crop.perennial || !bed || planting.inSince !== null) return [];
  const had =
    standsThisYear(planting, plan) ?? familyBefore(crop, bed, { year: plan.year, before });
  if (!had) return [];
  const when = whenHad(had.plan.year, plan.year);
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
