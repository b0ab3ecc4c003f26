import { type Day, plus, sayDay } from "../../base/index.ts";
import { clockOf, packetDays } from "./clock.ts";
import { lastHarvest } from "./ending.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import { inPlace, type SowingContext } from "./sowing-context.ts";
import { boundsOf, dailyWarmth, packetWarmth, warmthBetween } from "./warmth.ts";

/** Whether a sowing is ready for harvest in time in the usual season, and if not, why not. */
export type Ripening =
  | { readonly ripens: true }
  | { readonly ripens: false; readonly is: string; readonly fits: number | null };

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
  if (!isReached(ripe)) return { ripens: false, is: ripe.none, fits: longest(context, end) };
  if (end === null || ripe.usual <= end) return { ripens: true };
  const only = ripe.early <= end ? ", and in time only in a warm season" : "";
  const is = `it is ready about ${sayDay(ripe.usual)} in a usual season, after ${sayDay(end)}${only}`;
  return { ripens: false, is, fits: longest(context, end) };
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
