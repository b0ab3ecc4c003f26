import { type Day, latest, plus, sayDay } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { clockOf, packetDays } from "./clock.ts";
import { lastHarvest } from "./ending.ts";
import { isReached, type ReachedMilestone } from "./milestones.ts";
import { ripeInSeasons, ripeMilestone } from "./ripe.ts";
import { inPlace, type SowingContext } from "./sowing-context.ts";
import { boundsOf, dailyWarmth, packetWarmth, warmthBetween } from "./warmth.ts";

/** Whether a sowing is ready for harvest in time in the usual season, and if not, why not. */
export type Ripening =
  | { readonly ripens: true }
  | {
      readonly ripens: false;
      /** Not even in a warm season, nor by the warm side of a rough curve. */
      readonly certain: boolean;
      readonly is: string;
      readonly fits: number | null;
    };

/**
 * Whether it ripens here: its clock's acts must be anchored. `fits` is the longest packet, in days, that is ready in
 * time in a usual season; null where none is, or where growth does not depend on warmth. Crops that overwinter ripen.
 */
export function ripening(context: SowingContext): Ripening {
  const began = inPlace(context)?.day ?? null;
  const { overwinter, perennial } = context.crop;
  if (began === null || overwinter || perennial) return { ripens: true };
  const end = lastHarvest(context, began);
  const ripe = ripeMilestone(context);
  if (isReached(ripe) && ripe.usual <= (end ?? ripe.usual)) return { ripens: true };
  const certain = !inTimeIfWarm(context, end);
  const fits = longest(context, end);
  if (context.climate.rough && !certain) return { ripens: false, certain, is: MAYBE, fits };
  if (!isReached(ripe)) return { ripens: false, certain, is: ripe.none, fits };
  const only = end !== null && ripe.early <= end ? ", and in time only in a warm season" : "";
  const is = `it is ready about ${sayDay(ripe.usual)} in a usual season, after ${sayDay(end ?? ripe.usual)}${only}`;
  return { ripens: false, certain, is, fits };
}

/** Whether it is brought in ripe: where it was seen so, where a usual season does that, and where a rough curve leaves it open. */
export function mayRipen(context: SowingContext, { seen }: ReachedMilestone): boolean {
  if (seen) return true;
  const answer = ripening(context);
  return answer.ripens || (context.climate.rough && !answer.certain);
}

/** Days before the last one worth it on which what does not ripen is brought in. Source: house rule; a week for rain and weekends. */
const UNRIPE_DAYS = 7;

/**
 * The day on which what does not get ready before winter is brought in as it is: roots, tubers, bulbs and leaves are food
 * before that. Null where there is nothing to take: of what is tender, and of what stands for years or through the winter.
 */
export function takenUnripe(context: SowingContext): Day | null {
  const began = inPlace(context)?.day ?? null;
  const { overwinter, perennial } = context.crop;
  if (began === null || overwinter || perennial || isTender(context.crop)) return null;
  const ripe = ripeMilestone(context);
  if (isReached(ripe) && mayRipen(context, ripe)) return null;
  const end = lastHarvest(context, began);
  return end === null || end <= began ? null : latest(began, plus(end, -UNRIPE_DAYS));
}

/** Said where a rough curve leaves it open. */
const MAYBE = "it may not be ready before winter, by a rough guess from the frost dates";

/** Whether a warm season, or the warm side of a rough curve, brings it in time. */
function inTimeIfWarm(context: SowingContext, end: Day | null): boolean {
  const seasons = ripeInSeasons(context);
  if ("none" in seasons || seasons.warm === null) return false;
  return end === null || seasons.warm <= end;
}

/** No packet is shorter [days]. Source: house rule; cress is cut sooner, and nothing else. */
const SHORTEST = 20;

/** Tolerance for rounded sums: a day that lacks no more than this counts as complete. */
const NEARLY = 1e-6;

function longest(context: SowingContext, end: Day | null): number | null {
  const { warmth } = context.crop;
  const clock = clockOf(context);
  if (!warmth || "none" in clock || end === null) return null;
  const daily = dailyWarmth(context.climate, boundsOf(warmth), 0);
  const [, packet] = packetDays(context);
  const used = packet - clock.days;
  const before = warmthBetween(daily, clock.usual, plus(end, -1));
  const fits = Math.floor(before / packetWarmth(1, warmth) + used + NEARLY);
  return fits >= SHORTEST ? fits : null;
}
