import { type Day, plus } from "../../base/index.ts";
import { isReached } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/**
 * The day it reaches a height [cm], by the diary's measurements: at the daily growth from the day it was up to the last
 * measurement; null without a measurement, or where that was before it was up.
 * Source: house rule; a measured height says more than any number of days.
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
