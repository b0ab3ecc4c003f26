import { type Day, earliest, latest, plus } from "../../base/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { combineBasis } from "./anchors.ts";
import { autumnAfter, springAfter, wintersYoung } from "./autumn.ts";
import { type Clock, clockOf, packetDaysAhead, packetDaysLeft } from "./clock.ts";
import { growthEndOf, lastHarvest } from "./ending.ts";
import { memoizeBySowing, type OfSowing } from "./memo.ts";
import { isReached, type Milestone, seenMilestone } from "./milestones.ts";
import { ownWarmth } from "./own-warmth.ts";
import { paceOf } from "./pace.ts";
import { isCutAtOnce, yearlyHarvest } from "./perennial.ts";
import { postponed } from "./postponed.ts";
import { type SeasonWarmth, warmerK } from "./seasons.ts";
import { anchorOf, inPlace, type SowingContext } from "./sowing-context.ts";
import { winterPicking } from "./under-glass.ts";
import { upFrom } from "./up.ts";
import { boundsOf, dailyWarmth, MOST_DAYS, packetWarmth, reachedOn } from "./warmth.ts";
import { afterWinter } from "./winter.ts";

/**
 * When it is first ready: the packet's warmth, or the warmth it took in this garden before, summed from the day outdoor
 * warmth counts, in a warm, the usual and a cold season. None where winter comes first. A sighting replaces it.
 */
export const ripeMilestone: OfSowing<Milestone> = memoizeBySowing(
  ["start", "set out", "up", "first ripe"],
  (context) => postponed(context, "first ripe", ripeOf(context)),
);

function ripeOf(context: SowingContext): Milestone {
  const seen = anchorOf(context, "first ripe");
  if (seen) return seenMilestone(seen.day);
  const { perennial } = context.crop;
  if (perennial && !isCutAtOnce(context, perennial)) return yearlyHarvest(context, perennial);
  if (context.crop.overwinter) return ripeAfterWinter(context);
  const clock = clockOf(context);
  if ("none" in clock) return clock;
  const days = withFloor(context, spread(context, clock));
  if (days === null) return { none: "winter comes before it is ready" };
  const basis = combineBasis(clock.basis, context.crop.warmth ? ["warmth"] : ["age"]);
  return { ...days, basis, seen: false };
}

/**
 * No sooner than frost makes it sweet, one autumn in ten, or, for what lived through the winter young or grew where there is
 * no frost, than its days after spring begins.
 */
function floorOf(context: SowingContext): Day | null {
  const { winter } = context.crop;
  const start = inPlace(context);
  if (!winter || !start) return null;
  const { daysAfterSpring: after } = winter;
  if (winter.sweetened) return autumnAfter(context, start.day)?.early ?? null;
  const livesOn = wintersYoung(context, start.day) || autumnAfter(context, start.day) === null;
  if (!after || !livesOn || context.climate.underGlass) return null;
  return plus(springAfter(context, start.day), after.value);
}

function withFloor(context: SowingContext, days: RipeSpread | null): RipeSpread | null {
  const floor = floorOf(context);
  if (days === null || floor === null) return days;
  const usual = latest(days.usual, floor);
  return { early: latest(days.early, floor), usual, late: latest(days.late, usual) };
}

function ripeAfterWinter(context: SowingContext): Milestone {
  const { overwinter } = context.crop;
  const from = anchorOf(context, isRaised(context.planting.start) ? "set out" : "start");
  if (!from || !overwinter) return { none: "it is not in its place yet" };
  return afterWinter(context, from.day, overwinter.harvestDaysAfterLastFrost.value);
}

/** The first day of harvest in a warm, the usual and a cold season, whatever ends it; null where winter comes first. */
export type RipeBySeason = Readonly<Record<SeasonWarmth, Day | null>>;

/** The same for a sowing with anchored acts, for each season; none where its clock has not begun. */
export function ripeInSeasons(context: SowingContext): RipeBySeason | { readonly none: string } {
  if (context.crop.overwinter) {
    const ripe = ripeAfterWinter(context);
    return isReached(ripe) ? { warm: ripe.early, usual: ripe.usual, cold: ripe.late } : ripe;
  }
  const clock = clockOf(context);
  return "none" in clock ? clock : inEachSeason(context, clock);
}

/**
 * The clock run through the three seasons; where the usual one does not reach it, the others differ by a span until
 * winter.
 */
function inEachSeason(context: SowingContext, clock: Clock): RipeBySeason {
  const own = ownWarmth(context, clock.days);
  const pace = paceOf(context);
  const run = (from: Day, days: number, shiftK: number) =>
    runOn(context, from, { days, shiftK, pace, own: own?.warmth ?? null });
  const usual = run(clock.usual, clock.days, 0);
  const until = usual ?? growthEndOf(context, clock.usual) ?? plus(clock.usual, MOST_DAYS);
  const shift = (season: SeasonWarmth) =>
    warmerK(context.climate, season, clock.usual, until - clock.usual);
  return {
    warm: run(clock.early, clock.least, shift("warm")),
    usual,
    cold: run(clock.late, clock.most, shift("cold")),
  };
}

type RipeSpread = { readonly early: Day; readonly usual: Day; readonly late: Day };

/** Early ≤ usual ≤ late; null where the usual season does not reach it. */
function spread(context: SowingContext, clock: Clock): RipeSpread | null {
  const { warm, usual, cold } = inEachSeason(context, clock);
  if (usual === null) return null;
  return {
    early: earliest(warm ?? usual, usual),
    usual,
    late: latest(cold ?? lastChance(context, clock.usual, usual), usual),
  };
}

/** Where a cold season never brings it: the last day worth a harvest. */
function lastChance(context: SowingContext, from: Day, usual: Day): Day {
  return lastHarvest(context, from) ?? plus(usual, usual - from);
}

/**
 * The inputs of a run: the packet's days, how much warmer [K] the season is, the pace, and the garden's own warmth,
 * which includes its pace.
 */
type WarmthRun = {
  readonly days: number;
  readonly shiftK: number;
  readonly pace: number;
  readonly own: number | null;
};

/**
 * The day after the one that completes the warmth of a number of packet's days from a day on; null where winter comes
 * first.
 */
function runOn(
  context: SowingContext,
  from: Day,
  { days, shiftK, pace, own }: WarmthRun,
): Day | null {
  const { warmth } = context.crop;
  if (!warmth) return plus(from, days);
  const daily = dailyWarmth(context.climate, boundsOf(warmth), shiftK);
  const wanted = own ?? packetWarmth(days, warmth) * pace;
  const grown = reachedOn(daily, from, wanted);
  const light = winterPicking(context, from, { daily, wanted });
  const last = light !== null && (grown === null || light < grown) ? light : grown;
  const end = growthEndOf(context, from);
  return last === null || (end !== null && last >= end) ? null : plus(last, 1);
}

/** A run through the usual season at the usual pace. */
function usualRun(context: SowingContext, from: Day, days: number): Day | null {
  const own = ownWarmth(context, days)?.warmth ?? null;
  return runOn(context, from, { days, shiftK: 0, pace: 1, own });
}

/**
 * The first day of harvest of a sowing outdoors on a day in the usual season, whatever else is known of the planting;
 * null where it does not come up or winter comes first.
 */
export function ripeIfSown(context: SowingContext, sown: Day): Day | null {
  const up = upFrom(context, sown);
  if (up === null) return null;
  return usualRun(context, up, packetDaysLeft(context));
}

/**
 * The same for any way of beginning here, sown, planted or set out on that day: the first day of harvest in the usual
 * season, or null where it does not come up or winter comes first.
 */
export function ripeIfStarted(context: SowingContext, day: Day): Day | null {
  if (context.planting.start === "seed outdoors") return ripeIfSown(context, day);
  return usualRun(context, day, packetDaysAhead(context));
}
