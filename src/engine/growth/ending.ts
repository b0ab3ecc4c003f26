import { type Day, earliest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import type { SowingContext } from "./sowing-context.ts";
import { lastLongDay } from "./under-glass.ts";
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
 * nothing freezes: a place without frost, or a heated house.
 */
export function autumnAfter({ plan, bed }: SowingContext, from: Day): Autumn | null {
  const { firstFrost, killingFrost: hard } = frostsAt(plan.site, bed);
  if (!firstFrost) return null;
  const { to } = seasonOf(plan);
  const on = nextAnniversary(to, plus(from, -1)) - to;
  return {
    early: plus(firstFrost.early, on),
    usual: plus(firstFrost.usual, on),
    killing: plus(killingFrost(firstFrost, hard), on),
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
 * first frost for tender crops, two weeks after the killing frost for the rest; under glass the last day of ten hours or
 * the first frost in there for tender crops, and nothing for the rest. Null where nothing ends it.
 */
export function lastHarvest(context: SowingContext, from: Day): Day | null {
  const autumn = autumnAfter(context, from);
  if (context.climate.underGlass) return lastUnderGlass(context, from, autumn);
  if (!autumn) return null;
  return isTender(context.crop) ? autumn.usual : plus(autumn.killing, HARDY_GRACE_DAYS);
}

/** What is tender must be grown while days are long enough and nothing freezes; the rest stands there through the winter. */
function lastUnderGlass(context: SowingContext, from: Day, autumn: Autumn | null): Day | null {
  if (!isTender(context.crop)) return null;
  const light = lastLongDay(context, from);
  return light && autumn ? earliest(light, autumn.usual) : (light ?? autumn?.usual ?? null);
}

/**
 * The day that ends all growing for a crop: the killing frost, or the middle of winter for a crop that survives it;
 * null where nothing freezes, and for hardy crops under glass, which grow on in spring.
 */
export function growthEndOf(context: SowingContext, from: Day): Day | null {
  const autumn = autumnAfter(context, from);
  if (!autumn) return null;
  if (isTender(context.crop)) return autumn.killing;
  return context.climate.underGlass ? null : autumn.midwinter;
}
