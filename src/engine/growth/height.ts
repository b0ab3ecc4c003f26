import { type Day, plus } from "../../base/days/day.ts";
import { isReached } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/**
 * When it stands so tall [cm], by what the diary measured: as much a day as it grew from the day it was up to the last
 * measuring; null before anything was measured, or where it was measured before it was up.
 * Source: house rule; what stands in the row says more than any count of days.
 */
export function dayAtHeight(context: SowingContext, heightCm: number): Day | null {
  const up = upMilestone(context);
  const measured = context.observations.flatMap((observation) =>
    observation.kind === "measured" && observation.what === "height" ? [observation] : [],
  );
  const last = measured.at(-1);
  if (!last || !isReached(up) || last.day <= up.usual || last.value.si <= 0) return null;
  const aDayCm = last.value.si / (last.day - up.usual);
  return plus(up.usual, Math.ceil(heightCm / aDayCm - 1e-9));
}
