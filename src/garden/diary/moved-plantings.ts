import type { Plan } from "../model/plan.ts";
import type { Observation } from "./observation.ts";

/** The plans with each planting in the bed that the diary last moved it to; one that its year's plan does not have moves nothing. */
export function withMovedPlantings(
  plans: readonly Plan[],
  observations: readonly Observation[],
): readonly Plan[] {
  const beds = new Map(
    observations.flatMap((observation) =>
      observation.kind === "moved" ? [[observation.planting, observation.bed] as const] : [],
    ),
  );
  if (beds.size === 0) return plans;
  return plans.map((plan) => ({
    ...plan,
    plantings: plan.plantings.map((planting) => {
      const bed = beds.get(planting.key);
      return bed !== undefined && plan.beds.some(({ key }) => key === bed)
        ? { ...planting, bed }
        : planting;
    }),
  }));
}
