import { latest, plus } from "../../base/index.ts";
import type { Observation, ObservedStage } from "../../garden/index.ts";
import { combineBasis } from "./anchors.ts";
import { isReached, type Milestone, type ReachedMilestone } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";

type LookedInVain = Extract<Observation, { readonly kind: "not yet" }>;

/** Days until a stage is looked for again after somebody looked in vain. Source: house rule. */
export const LOOK_AGAIN_DAYS = 3;

/** Days after its latest day by which what is missing of a sowing is its green. Source: house rule; later it is the crop. */
const STILL_UP_DAYS = 14;
/** Days before its earliest day from which what is missing is the crop. Source: house rule. */
const ALMOST_RIPE_DAYS = 10;

/** Whether a look in vain was for this stage; where the line does not say for what, whether it was the one to be expected. */
function isMeant(
  { day, of }: LookedInVain,
  stage: ObservedStage,
  { early, late }: ReachedMilestone,
): boolean {
  if (!("stage" in of) || of.stage !== "anything") return "stage" in of && of.stage === stage;
  if (stage === "up") return day <= plus(late, STILL_UP_DAYS);
  return stage === "first ripe" && day >= plus(early, -ALMOST_RIPE_DAYS);
}

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
    isMeant(observation, stage, milestone) &&
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
