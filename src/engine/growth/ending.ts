import { type Day, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { shortDays } from "../climate/sun.ts";
import type { SowingContext } from "./sowing-context.ts";
import { nextAnniversary } from "./winter.ts";

/**
 * The autumn that ends growth: its first frost, early and usual, the killing frost, and the middle of the winter after
 * it.
 */
export type Autumn = {
  readonly early: Day;
  readonly usual: Day;
  readonly killing: Day;
  readonly midwinter: Day;
};

/**
 * The autumn before the next middle of winter after a day, so that a day in late autumn has that same autumn; null where
 * nothing freezes: a place without frost, or a bed under glass.
 */
export function autumnAfter({ plan, bed }: SowingContext, from: Day): Autumn | null {
  const { firstFrost } = plan.site;
  if (!firstFrost || bed?.kind === "greenhouse") return null;
  const { to } = seasonOf(plan);
  const on = nextAnniversary(to, plus(from, -1)) - to;
  return {
    early: plus(firstFrost.early, on),
    usual: plus(firstFrost.usual, on),
    killing: plus(killingFrost(firstFrost, plan.site.killingFrost), on),
    midwinter: plus(to, on),
  };
}

/**
 * Days after the killing frost for which hardy crops are still brought in from under snow and mulch. Source: house
 * rule, two weeks.
 */
const HARDY_GRACE_DAYS = 14;

/**
 * The last day, in a usual year, on which a crop started on a day is still worth harvesting for the first time: the
 * first frost for tender crops, two weeks after the killing frost for the rest, and under glass the last day of ten
 * hours, because it must be grown by then; null where nothing ends it.
 */
export function lastHarvest(context: SowingContext, from: Day): Day | null {
  if (context.bed?.kind === "greenhouse") return lastLongDay(context, from);
  const autumn = autumnAfter(context, from);
  if (!autumn) return null;
  return isTender(context.crop) ? autumn.usual : plus(autumn.killing, HARDY_GRACE_DAYS);
}

/** The last day of ten hours or more before the next days that are shorter; null where none are, or no latitude is known. */
function lastLongDay({ climate: { dayHours } }: SowingContext, from: Day): Day | null {
  const short = dayHours && shortDays(dayHours, from);
  return short && plus(short.first, -1);
}

/**
 * The day that ends all growing for a crop: the killing frost, or the middle of winter for a crop that survives it;
 * null where nothing freezes.
 */
export function growthEndOf(context: SowingContext, from: Day): Day | null {
  const autumn = autumnAfter(context, from);
  if (!autumn) return null;
  return isTender(context.crop) ? autumn.killing : autumn.midwinter;
}
