import { latest, plus } from "../../base/days/day.ts";
import type { ObservedStage } from "../../garden/diary/observation.ts";
import { combineBasis } from "./anchors.ts";
import { isReached, type Milestone } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";

/** Days after one looked in vain for which the stage is looked for again. Source: house rule. */
export const LOOK_AGAIN_DAYS = 3;

/**
 * A stage that is reckoned, held back by what the diary looked for and did not find: never before the day after, and
 * likely no sooner than three days on. What was seen stands as it is.
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
