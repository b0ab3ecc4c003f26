import { type Day, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { longEnoughFrom, shortDays } from "../climate/sun.ts";
import type { DateTest } from "./date-decision.ts";
import type { SowingContext } from "./sowing-context.ts";
import { type DailyAmount, sumBetween } from "./sums.ts";

/** Hours of daylight that crops which fruit need to be planted under glass. Source: house rule; from the equinox on. */
const FRUIT_HOURS = 12;

/**
 * The condition that light makes for a start under glass: days of ten hours, and of twelve for tender crops. None in the
 * open, and where no latitude is known.
 */
export function lightTests({ climate, plan, crop }: SowingContext): readonly DateTest[] {
  const { dayHours, underGlass } = climate;
  if (!underGlass || !dayHours) return [];
  const day = longEnoughFrom(
    dayHours,
    seasonOf(plan).from,
    isTender(crop) ? FRUIT_HOURS : undefined,
  );
  return day === null ? [] : [{ basis: "time of year", day }];
}

/** The last day of ten hours or more before the next days that are shorter; null where none are, or no latitude is known. */
export function lastLongDay({ climate: { dayHours } }: SowingContext, from: Day): Day | null {
  const short = dayHours && shortDays(dayHours, from);
  return short && plus(short.first, -1);
}

/** Days after the last of ten hours in which fruit of tender crops still colours under glass. Source: house rule, two weeks. */
const COLOURS_DAYS = 14;

/** The day that ends a tender crop under glass, and what of: frost in there, or days too short. */
export type GlassEnd = { readonly day: Day; readonly by: "frost" | "short days" };

/** Days into a season by which the short days of its winter are over. Source: house rule; shorter than ten hours to March at most. */
const SUMMER_DAYS = 120;

/**
 * The end in a usual year of a tender crop that bears under glass: frost in there, or two weeks after the last day of ten
 * hours, whichever is sooner; null where neither comes.
 */
export function glassEnd(context: SowingContext): GlassEnd | null {
  const { plan, bed } = context;
  const light = lastLongDay(context, plus(seasonOf(plan).from, SUMMER_DAYS));
  const dark = light && plus(light, COLOURS_DAYS);
  const frost = frostsAt(plan.site, bed).firstFrost?.usual ?? null;
  if (frost !== null && (dark === null || frost <= dark)) return { day: frost, by: "frost" };
  return dark && { day: dark, by: "short days" };
}

/** The part of its growth that a leaf crop needs by the last day of ten hours to be picked lightly all winter. Source: house rule, half. */
const HALF_GROWN = 0.5;

/**
 * The last day of ten hours, from which a leaf crop under glass that is half grown by then is picked through the winter,
 * though it grows no further before spring; null where there is no such day, and for other crops. `daily` and `wanted` are
 * its warmth [degree-C days].
 */
export function winterPicking(
  context: SowingContext,
  from: Day,
  { daily, wanted }: { readonly daily: DailyAmount; readonly wanted: number },
): Day | null {
  const { climate, crop } = context;
  if (!climate.underGlass || crop.harvest.kind !== "cut and come again") return null;
  const light = lastLongDay(context, from);
  if (light === null || sumBetween(daily, from, light) < HALF_GROWN * wanted) return null;
  return light;
}
