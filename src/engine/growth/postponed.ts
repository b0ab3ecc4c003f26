import { latest, plus } from "../../base/index.ts";
import type { ObservedStage } from "../../garden/index.ts";
import { combineBasis } from "./anchors.ts";
import { isReached, type Milestone } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";

/** Days until a stage is looked for again after somebody looked in vain. Source: house rule. */
export const LOOK_AGAIN_DAYS = 3;

/**
 * A calculated stage, postponed by a look in vain in the diary: never before the day after, and probably no sooner than
 * three days later. What was seen stays as it is.
 */
export function postponed(
  context: SowingContext,
  stage: ObservedStage,
  milestone: Milestone,
): Milestone {
  if (!isReached(milestone) || milestone.seen) return milestone;
  const looked = context.observations.flatMap((observation) =>
    observation.kind === "not yet" &&
    "stage" in observation.of &&
    observation.of.stage === stage &&
    (observation.sowing ?? 1) === context.sowing
      ? [observation.day]
      : [],
  );
  if (looked.length === 0) return milestone;
  const last = latest(...looked);
  const usual = latest(milestone.usual, plus(last, LOOK_AGAIN_DAYS));
  return {
    ...milestone,
    early: latest(milestone.early, plus(last, 1)),
    usual,
    late: latest(milestone.late, usual),
    basis: combineBasis(milestone.basis, ["seen"]),
  };
}
