import { type Day, plus } from "../../base/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { autumnAfter } from "../growth/autumn.ts";
import { ripeInSeasons } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { autumnPlantingDay, plantingOutDay, settingOutDay } from "../growth/starting.ts";
import { type StartChance, startedOn } from "./chances.ts";

const NO_OUTCOME = { inTime: "none", ripe: null, end: null, why: null, opens: null } as const;

/**
 * The chance of a crop that is planted in autumn and lives through the winter: safe in its usual weeks around the
 * killing frost, a gamble from then until it would be mulched, because the ground may freeze; null in a place without
 * frost.
 */
export function winterChance(context: SowingContext, day: Day): StartChance | null {
  const { overwinter } = context.crop;
  const decision = autumnPlantingDay(context);
  const { firstFrost, killingFrost: own } = context.plan.site;
  if (!overwinter || !decision || !firstFrost) return null;
  const [least, most] = overwinter.plantDaysAfterKillingFrost.value;
  const half = Math.floor((most - least) / 2);
  const opens = plus(decision.day, -half);
  const freezes = plus(
    killingFrost(firstFrost, own),
    overwinter.mulchDaysAfterKillingFrost.value[1],
  );
  if (day < opens) return { ...goingIn(context, opens), verdict: "not yet", opens };
  if (day <= plus(decision.day, half)) return { ...goingIn(context, day), verdict: "safe" };
  if (day <= freezes) return { ...goingIn(context, day), inTime: "usual", verdict: "a gamble" };
  return { ...NO_OUTCOME, verdict: "too late", why: "too late" };
}

function goingIn(context: SowingContext, day: Day): Omit<StartChance, "verdict"> {
  const ripe = ripeInSeasons(startedOn(context, day));
  return { ...NO_OUTCOME, inTime: "any", ripe: "none" in ripe ? null : ripe };
}

/** Days that roots need before hard frost. Source: common practice, six weeks. */
const ROOTING_DAYS = 42;

/**
 * The chance of a perennial, which only has to take root: safe from its spring day until six weeks before hard frost;
 * null where the facts do not have that way to begin.
 */
export function rootingChance(context: SowingContext, day: Day): StartChance | null {
  const { crop, planting } = context;
  const first =
    planting.start === "plants"
      ? settingOutDay(context)
      : crop.outdoors && plantingOutDay(context, crop.outdoors);
  if (!first) return null;
  const autumn = autumnAfter(context, day);
  const any = { ...NO_OUTCOME, inTime: "any" } as const;
  if (day < first.day) return { ...any, verdict: "not yet", opens: first.day };
  if (autumn === null || plus(day, ROOTING_DAYS) <= autumn.killing)
    return { ...any, verdict: "safe" };
  return { ...NO_OUTCOME, verdict: "too late", why: "too late" };
}
