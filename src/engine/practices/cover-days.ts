import { type Day, earliest, latest, plus } from "../../base/index.ts";
import type { Pest, PlantCoverName } from "../../crops/index.ts";
import type { Basis } from "../growth/anchors.ts";
import { flowerMilestone } from "../growth/flower.ts";
import { isReached, type ReachedMilestone } from "../growth/milestones.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { type Window, window } from "./task.ts";

/** A day that a cover goes on or comes off, and of which sowing and stage that is. */
export type CoverDay = {
  readonly context: SowingContext;
  readonly window: Window;
  readonly basis: readonly Basis[];
  /** The stage's day, and how `why` names it. */
  readonly stage: { readonly day: Day; readonly told: string };
};

/** What is laid over plants and taken off again. */
export type LaidCover = Exclude<PlantCoverName, "board">;

/** A planting's cover from the day it goes on to the day it comes off; off is null where nobody but the gardener says when. */
export type CoverPeriod = {
  readonly context: SowingContext;
  readonly against: Pest | null;
  readonly thing: LaidCover;
  /** How its ids end: nothing, or the pest where the planting has a cover before this one. */
  readonly suffix: string;
  readonly on: CoverDay;
  readonly off: CoverDay | null;
  readonly offSign: string | null;
  /** Why it comes off, where that is not that they have outgrown it; a full sentence. */
  readonly offWhy?: string;
  /** Whether bees end it, so that it comes off whatever stands beside it. */
  readonly forBees: boolean;
};

/** Days that taking off may wait where no bee is waiting for it. Source: house rule; a net too long harms little. */
export const MAY_STAY_DAYS = 10;
/** Days past its first flower by which bees must be let in. Source: covers off at first flower, within three days; the first flowers are male. */
const BEES_WAIT_DAYS = 2;

/** The day it goes into its place; null where that is not known yet. */
export function dayInPlace(context: SowingContext): CoverDay | null {
  const anchor = inPlace(context);
  if (!anchor) return null;
  return {
    context,
    window: window(anchor.day, anchor.day, plus(anchor.day, 3), "earlier"),
    basis: anchor.basis,
    stage: { day: anchor.day, told: "As it goes into its place, " },
  };
}

/** The cover with its end no later than the first flower that bees must reach; none where that opens before it is on. */
export function inTime(period: Omit<CoverPeriod, "forBees">): readonly CoverPeriod[] {
  const { context, on, off } = period;
  const flower = context.crop.flowers?.forBees ? flowerMilestone(context) : null;
  if (!flower || !isReached(flower)) return [{ ...period, forBees: false }];
  if (flower.usual <= on.window.due) return [];
  if (off && off.window.due < flower.early)
    return [{ ...period, off: byFlower(off, flower.early), forBees: false }];
  return [{ ...period, off: beforeBees(context, flower, on.window.due), forBees: true }];
}

/** It may wait until the first flower, and no longer. */
function byFlower(off: CoverDay, flower: Day): CoverDay {
  return { ...off, window: { ...off.window, latest: earliest(off.window.latest, flower) } };
}

/** Off as the first flower opens, on the early side, since it hides from who does not look. */
function beforeBees(context: SowingContext, flower: ReachedMilestone, on: Day): CoverDay {
  const { early, usual, basis } = flower;
  return {
    context,
    window: window(latest(plus(on, 1), early), usual, plus(usual, BEES_WAIT_DAYS), "earlier"),
    basis,
    stage: { day: usual, told: "As its first flower opens, about " },
  };
}
