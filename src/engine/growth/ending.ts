import { type Day, earliest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { type Autumn, autumnAfter, wintersYoung } from "./autumn.ts";
import type { SowingContext } from "./sowing-context.ts";
import { lastLongDay } from "./under-glass.ts";

/**
 * Days after the killing frost for which hardy crops are still brought in from under snow and mulch. Source: house
 * rule, two weeks.
 */
const HARDY_GRACE_DAYS = 14;

/**
 * Whether it is lifted to dry and be stored: onions and potatoes, whose tops the killing frost ends, and which must be in
 * before it. Source: common practice.
 */
export const isCured = ({ crop }: SowingContext) =>
  crop.care.some(({ practice, from }) => practice === "cure and store" && from === "first harvest");

/**
 * The last day, in a usual year, on which a crop started on a day is still worth harvesting for the first time: the
 * first frost for tender crops, the killing frost for what is dried to keep, two weeks after it for the rest; under glass the last day of ten hours or
 * the first frost in there for tender crops, and nothing for the rest. Null where nothing ends it, as for what lives through
 * the winter young.
 */
export function lastHarvest(context: SowingContext, from: Day): Day | null {
  const autumn = autumnAfter(context, from);
  if (context.climate.underGlass) return lastUnderGlass(context, from, autumn);
  if (!autumn) return null;
  if (isTender(context.crop)) return autumn.usual;
  if (wintersYoung(context, from)) return null;
  return isCured(context) ? autumn.killing : plus(autumn.killing, HARDY_GRACE_DAYS);
}

/** What is tender must be grown while days are long enough and nothing freezes; the rest stands there through the winter. */
function lastUnderGlass(context: SowingContext, from: Day, autumn: Autumn | null): Day | null {
  if (!isTender(context.crop)) return null;
  const light = lastLongDay(context, from);
  return light && autumn ? earliest(light, autumn.usual) : (light ?? autumn?.usual ?? null);
}

/**
 * The day that ends all growing for a crop: the killing frost for what is tender or dried to keep, or the middle of winter for a crop that survives it;
 * null where nothing freezes, for hardy crops under glass, and for what lives through the winter young: they grow on in
 * spring.
 */
export function growthEndOf(context: SowingContext, from: Day): Day | null {
  const autumn = autumnAfter(context, from);
  if (!autumn) return null;
  if (isTender(context.crop)) return autumn.killing;
  if (isCured(context) && !context.climate.underGlass && !wintersYoung(context, from))
    return autumn.killing;
  return context.climate.underGlass || wintersYoung(context, from) ? null : autumn.midwinter;
}
