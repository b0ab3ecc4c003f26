import { type Day, plus } from "../../base/index.ts";
import { type Crop, isTender } from "../../crops/index.ts";
import { autumnAfter } from "./autumn.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";
import { winterEndOf } from "./through-winter.ts";

/**
 * The day a sowing ends by itself: it has borne for its time, or kept as long as it can; null where it bears until
 * frost, where frost may come first (one autumn in ten), and where it does not ripen.
 */
export function naturalEndOf(context: SowingContext): Day | null {
  const { kind, bearsDays, holdsDays } = context.crop.harvest;
  const ripe = ripeMilestone(context);
  if (!isReached(ripe)) return null;
  const winter = winterEndOf(context, ripe.usual);
  if (winter) return winter.day;
  if (kind === "again and again" && bearsDays === null) return null;
  const over = plus(ripe.usual, bearsDays?.value[1] ?? holdsDays.value);
  const autumn = autumnAfter(context, ripe.usual);
  return autumn === null || over < autumn.early ? over : null;
}

/** Whether green fruit of it colours once it is picked: tomatoes and peppers. Source: common practice. */
export const coloursIndoors = ({ key }: Crop): boolean => key === "tomato" || key === "pepper";

/** Nights too cool for fruit of tender crops to set or ripen, where no frost ends them [°C]. Source: common practice, 50 °F. */
export const COOL_NIGHTS_C = 10;

/** Days after the first harvest that are searched for such nights. Source: house rule; the rest of a year but for its spring. */
const SEARCHED_DAYS = 270;

/**
 * The day on which nights grow too cool for what would else bear until frost, in the open where nothing freezes; null elsewhere, and
 * where nights never are.
 */
export function coolNightsEnd(context: SowingContext, ripe: Day): Day | null {
  const { crop, climate } = context;
  const { kind, bearsDays } = crop.harvest;
  if (kind !== "again and again" || bearsDays !== null || crop.perennial) return null;
  if (climate.underGlass || !isTender(crop) || autumnAfter(context, ripe)) return null;
  for (let day = ripe; day <= ripe + SEARCHED_DAYS; day = plus(day, 1))
    if (climate.usual().air(day).lowC < COOL_NIGHTS_C) return day;
  return null;
}
