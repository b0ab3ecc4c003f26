import { type Day, earliest, latest, plus } from "../../base/days/day.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import { allGrounds } from "./anchors.ts";
import { type Clock, clockOf, packetDaysAhead, packetDaysLeft } from "./clock.ts";
import { growingEnds, lastHarvest } from "./ending.ts";
import { anchorOf, type Growing } from "./growing.ts";
import { memo } from "./memo.ts";
import { type Milestone, reached, seenOn } from "./milestones.ts";
import { heldBack } from "./not-yet.ts";
import { ownWarmth } from "./own.ts";
import { paceOf } from "./pace.ts";
import { yearlyHarvest } from "./perennial.ts";
import { type Season, warmerK } from "./seasons.ts";
import { upFrom } from "./up.ts";
import { boundsOf, dailyWarmth, MOST_DAYS, packetWarmth, reachedOn } from "./warmth.ts";
import { afterWinter } from "./winter.ts";

const ripes = memo<Milestone>();

/**
 * When it is first ready: the packet's warmth, or what this garden itself took before, gathered from the day outdoor
 * warmth counts, in a warm, the usual and a cold season. None where winter comes first. What was seen replaces it.
 */
export function ripeMilestone(growing: Growing): Milestone {
  return ripes(growing, () => heldBack(growing, "first ripe", ripeOf(growing)));
}

function ripeOf(growing: Growing): Milestone {
  const seen = anchorOf(growing, "first ripe");
  if (seen) return seenOn(seen.day);
  if (growing.crop.perennial) return yearlyHarvest(growing, growing.crop.perennial);
  if (growing.crop.overwinter) return wintered(growing);
  const clock = clockOf(growing);
  if ("none" in clock) return clock;
  const days = spread(growing, clock);
  if (days === null) return { none: "winter comes before it is ready" };
  const grounds = allGrounds(clock.grounds, growing.crop.warmth ? ["warmth"] : ["age"]);
  return { ...days, grounds, seen: false };
}

function wintered(growing: Growing): Milestone {
  const { overwinter } = growing.crop;
  const from = anchorOf(growing, isRaised(growing.planting.start) ? "set out" : "start");
  if (!from || !overwinter) return { none: "it is not in its place yet" };
  return afterWinter(growing, from.day, overwinter.harvestDaysAfterLastFrost.value);
}

/** The first day of harvest in a warm, the usual and a cold season, whatever ends it; null where winter comes first. */
export type InSeasons = Readonly<Record<Season, Day | null>>;

/** The same for a sowing whose acts are anchored, each season by itself; none where its clock has not begun. */
export function ripeInSeasons(growing: Growing): InSeasons | { readonly none: string } {
  if (growing.crop.overwinter) {
    const ripe = wintered(growing);
    return reached(ripe) ? { warm: ripe.early, usual: ripe.usual, cold: ripe.late } : ripe;
  }
  const clock = clockOf(growing);
  return "none" in clock ? clock : inEachSeason(growing, clock);
}

/** The clock run through the three seasons; where the usual one does not bring it, the others differ by a span till winter. */
function inEachSeason(growing: Growing, clock: Clock): InSeasons {
  const own = ownWarmth(growing, clock.days);
  const pace = paceOf(growing);
  const run = (from: Day, days: number, shiftK: number) =>
    runOn(growing, from, { days, shiftK, pace, own: own?.warmth ?? null });
  const usual = run(clock.usual, clock.days, 0);
  const until = usual ?? growingEnds(growing, clock.usual) ?? plus(clock.usual, MOST_DAYS);
  const shift = (season: Season) =>
    warmerK(growing.climate, season, clock.usual, until - clock.usual);
  return {
    warm: run(clock.early, clock.least, shift("warm")),
    usual,
    cold: run(clock.late, clock.most, shift("cold")),
  };
}

type Days = { readonly early: Day; readonly usual: Day; readonly late: Day };

/** Early ≤ usual ≤ late; null where the usual season does not bring it. */
function spread(growing: Growing, clock: Clock): Days | null {
  const { warm, usual, cold } = inEachSeason(growing, clock);
  if (usual === null) return null;
  return {
    early: earliest(warm ?? usual, usual),
    usual,
    late: latest(cold ?? lastChance(growing, clock.usual, usual), usual),
  };
}

/** Where a cold season never brings it: the last day worth a harvest. */
function lastChance(growing: Growing, from: Day, usual: Day): Day {
  return lastHarvest(growing, from) ?? plus(usual, usual - from);
}

/** What a run goes by: the packet's days, how much warmer [K] the season is, the pace, and the garden's own warmth, which holds its pace already. */
type Run = {
  readonly days: number;
  readonly shiftK: number;
  readonly pace: number;
  readonly own: number | null;
};

/** The day after the one that ends the warmth of so many packet's days from a day on; null where winter comes first. */
function runOn(growing: Growing, from: Day, { days, shiftK, pace, own }: Run): Day | null {
  const { warmth } = growing.crop;
  if (!warmth) return plus(from, days);
  const daily = dailyWarmth(growing.climate, boundsOf(warmth), shiftK);
  const last = reachedOn(daily, from, own ?? packetWarmth(days, warmth) * pace);
  const end = growingEnds(growing, from);
  return last === null || (end !== null && last >= end) ? null : plus(last, 1);
}

/** A run through the usual season at the usual pace. */
function usualRun(growing: Growing, from: Day, days: number): Day | null {
  const own = ownWarmth(growing, days)?.warmth ?? null;
  return runOn(growing, from, { days, shiftK: 0, pace: 1, own });
}

/**
 * The first day of harvest of a sowing outdoors on a day in the usual season, whatever else is known of the planting;
 * null where it does not come up or winter comes first.
 */
export function ripeIfSown(growing: Growing, sown: Day): Day | null {
  const up = upFrom(growing, sown);
  if (up === null) return null;
  return usualRun(growing, up, packetDaysLeft(growing));
}

/**
 * The same for whatever way it begins here: sown or planted on that day, or set out on it. A first day of harvest in the
 * usual season, or null where it does not come up or winter comes first.
 */
export function ripeIfStarted(growing: Growing, day: Day): Day | null {
  if (growing.planting.start === "seed outdoors") return ripeIfSown(growing, day);
  return usualRun(growing, day, packetDaysAhead(growing));
}
