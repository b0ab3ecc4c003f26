import { latest, plus } from "../../base/days/day.ts";
import type { Stage } from "../../garden/diary/fact.ts";
import { allGrounds } from "./anchors.ts";
import type { Growing } from "./growing.ts";
import { type Milestone, reached } from "./milestones.ts";

/** Days after one looked in vain for which the stage is looked for again. Source: house rule. */
export const LOOK_AGAIN_DAYS = 3;

/**
 * A stage that is reckoned, held back by what the diary looked for and did not find: never before the day after, and
 * likely no sooner than three days on. What was seen stands as it is.
 */
export function heldBack(growing: Growing, stage: Stage, milestone: Milestone): Milestone {
  if (!reached(milestone) || milestone.seen) return milestone;
  const looked = growing.facts.flatMap((fact) =>
    fact.kind === "not yet" &&
    "stage" in fact.of &&
    fact.of.stage === stage &&
    (fact.sowing ?? 1) === growing.sowing
      ? [fact.day]
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
    grounds: allGrounds(milestone.grounds, ["seen"]),
  };
}
