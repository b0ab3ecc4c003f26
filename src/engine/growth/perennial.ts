import { partsOf } from "../../base/days/day.ts";
import type { Perennial } from "../../crops/facts.ts";
import type { Growing } from "./growing.ts";
import { daysOn, type Milestone } from "./milestones.ts";

/** Summers it has stood with this one, counted from the year it was planted in: 1 in its first. */
export function summersOf({ planting, plan }: Growing): number {
  return planting.inSince === null ? 1 : plan.year - partsOf(planting.inSince).year + 1;
}

/**
 * When what stands for years is first cut or picked this year, counted from the usual last frost; none in its first
 * summers, and where there is no frost to count from.
 */
export function yearlyHarvest(growing: Growing, facts: Perennial): Milestone {
  const { lastFrost } = growing.plan.site;
  if (summersOf(growing) < facts.firstHarvestYear.value)
    return { none: "it is left alone in its first years" };
  if (!lastFrost) return { none: "there is no last frost to count from" };
  return daysOn(lastFrost.usual, facts.harvestDaysAfterLastFrost.value, ["last frost"]);
}
