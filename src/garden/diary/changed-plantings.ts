import { latest } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import type { Plan, Planting } from "../model/plan.ts";
import type { Observation } from "./observation.ts";

type PlantingChange = Extract<Observation, { readonly kind: "moved" | "bought" }>;

/**
 * The plans as the diary has changed them: each planting in the bed that it was last moved to, and what was bought begun
 * from plants, to go out no sooner than that day. A bed that its year's plan does not have changes nothing, nor do plants
 * of a crop that is never set out.
 */
export function withChangedPlantings(
  plans: readonly Plan[],
  observations: readonly Observation[],
): readonly Plan[] {
  const changes = new Map<string, PlantingChange[]>();
  for (const change of observations)
    if (change.kind === "moved" || change.kind === "bought")
      changes.set(change.planting, [...(changes.get(change.planting) ?? []), change]);
  if (changes.size === 0) return plans;
  return plans.map((plan) => ({
    ...plan,
    plantings: plan.plantings.map((planting) =>
      (changes.get(planting.key) ?? []).reduce(
        (now, change) => changed(now, change, plan),
        planting,
      ),
    ),
  }));
}

function changed(planting: Planting, change: PlantingChange, plan: Plan): Planting {
  if (change.kind === "moved")
    return plan.beds.some(({ key }) => key === change.bed)
      ? { ...planting, bed: change.bed }
      : planting;
  const bought: Planting = {
    ...planting,
    start: "plants",
    notBefore: latest(change.day, planting.notBefore ?? change.day),
  };
  return cropFor(bought)?.settingOut ? bought : planting;
}
