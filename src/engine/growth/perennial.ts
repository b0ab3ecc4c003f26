import { type Day, latest, partsOf, plus } from "../../base/index.ts";
import type { Perennial } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { combineBasis } from "./anchors.ts";
import { springAfter } from "./autumn.ts";
import { isReached, type Milestone, milestoneAfter } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";
import { boundsOf, dailyWarmth, packetWarmth, reachedOn } from "./warmth.ts";

/** How many summers it has had with this one, counted from the year it was planted in: 1 in its first. */
export function summersOf({ planting, plan }: SowingContext): number {
  return planting.inSince === null ? 1 : plan.year - partsOf(planting.inSince).year + 1;
}

/**
 * When a perennial is first cut or picked this year, counted from the usual last frost, or the equinox where there is none;
 * none in its first summers.
 */
export function yearlyHarvest(context: SowingContext, facts: Perennial): Milestone {
  if (summersOf(context) < facts.firstHarvestYear.value)
    return { none: "it is left alone in its first years" };
  const spring = springAfter(context, seasonOf(context.plan).from);
  const basis = context.plan.site.lastFrost ? "last frost" : "time of year";
  const harvest = milestoneAfter(spring, facts.harvestDaysAfterLastFrost.value, [basis]);
  return facts.ends === "clear" ? inCoolSpring(context, spring, harvest) : harvest;
}

/** Fruit is no sooner ripe than its days' warmth has come: a mild winter's last frost is early, and its spring cool. */
function inCoolSpring(context: SowingContext, spring: Day, harvest: Milestone): Milestone {
  const { crop, climate } = context;
  if (!crop.warmth || !isReached(harvest)) return harvest;
  const { warmth } = crop;
  const daily = dailyWarmth(climate, boundsOf(warmth), 0);
  const slower = (day: Day) => {
    const reached = reachedOn(daily, spring, packetWarmth(day - spring, warmth));
    return reached === null ? day : latest(day, plus(reached, 1));
  };
  const { early, usual, late, basis } = harvest;
  const [from, on, to] = [slower(early), slower(usual), slower(late)];
  return { early: from, usual: on, late: to, basis: combineBasis(basis, ["warmth"]), seen: false };
}

/** Whether it is in its first summer here and is cut in that one already, so that its days count from its planting. */
export function isCutAtOnce({ planting }: SowingContext, facts: Perennial): boolean {
  return planting.inSince === null && facts.firstHarvestYear.value <= 1;
}
