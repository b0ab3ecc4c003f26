import { type Day, earliest, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { rowCm } from "./amounts.ts";
import { LAST_SOWING_NUMBER, MOST_SOWINGS } from "./anchors.ts";
import { autumnAfter } from "./autumn.ts";
import { refusalOf } from "./limits.ts";
import { memoizeByPlanting } from "./memo.ts";
import { middle } from "./milestones.ts";
import { ripeIfSown } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";

/** One of the times a planting is sown: its number, from 1, its day, and the day its harvest begins in a usual season. */
export type SuccessionSowing = {
  readonly number: number;
  readonly day: Day;
  readonly ripe: Day | null;
};

/** Days from the first sowing over which sowings go on where no frost ends them. Source: house rule, half a year. */
const WITHOUT_FROST_DAYS = 183;

const successions = memoizeByPlanting<Day, readonly SuccessionSowing[]>();

/**
 * The sowings of a planting that is sown again and again, the first on that day: each on the day whose harvest begins
 * so many days after the one before, by warmth, so that sowings are far apart in cool weeks and close in warm ones. One
 * that heat, long days or cold would spoil is left out; the others keep their numbers, and it does not count among the
 * times that the plan asks for. None comes too late to be ready, or after the plan's season.
 * Source: University of Connecticut IPM, Scheduling sweet corn plantings: as much warmth between two sowings as the
 * wanted days bring at harvest.
 */
export function successionOf(context: SowingContext, first: Day): readonly SuccessionSowing[] {
  return successions(context, first, () => calculateSowings(context, first));
}

function calculateSowings(context: SowingContext, first: Day): readonly SuccessionSowing[] {
  const ripe = ripeIfSown(context, first);
  const sowings: SuccessionSowing[] = [{ number: 1, day: first, ripe }];
  const { repeat } = context.planting;
  if (!repeat || ripe === null) return sowings;
  const times = repeat.times ?? MOST_SOWINGS;
  const last = lastSowingDay(context, first);
  let before = first;
  for (let number = 2; number <= LAST_SOWING_NUMBER && sowings.length < times; number++) {
    const wanted = plus(ripe, (number - 1) * repeat.everyDays);
    const day = sowingDayFor(context, wanted, before);
    const refusal = refusalOf(context, day);
    if (refusal === "too late" || day > last || isAfterWinter(context, day)) break;
    before = day;
    if (refusal === null) sowings.push({ number, day, ripe: ripeIfSown(context, day) });
  }
  return sowings;
}

/** The season's last day, or half a year after the first sowing where no frost ends the sowings. */
function lastSowingDay({ plan, bed }: SowingContext, first: Day): Day {
  const { to } = seasonOf(plan);
  return frostsAt(plan.site, bed).firstFrost === null
    ? earliest(plus(first, WITHOUT_FROST_DAYS), to)
    : to;
}

/** Whether a sowing would live through the winter and be ready after it: that is no row of even harvests any longer. */
function isAfterWinter(context: SowingContext, day: Day): boolean {
  const autumn = context.crop.winter && autumnAfter(context, day);
  const ripe = autumn && ripeIfSown(context, day);
  return autumn !== null && ripe !== null && ripe > autumn.midwinter;
}

/** The first day after `before` whose sowing is not ready before the wanted day. */
function sowingDayFor(context: SowingContext, wanted: Day, before: Day): Day {
  let [early, late] = [plus(before, 1), wanted];
  while (early < late) {
    const day = plus(early, Math.floor((late - early) / 2));
    const ripe = ripeIfSown(context, day);
    if (ripe === null || ripe >= wanted) late = day;
    else early = plus(day, 1);
  }
  return early;
}

/** Days that one sowing is in its place: from its day to the end of its harvest. */
function daysInPlace({ crop }: SowingContext, { day, ripe }: SuccessionSowing): number {
  const { cuts, bearsDays, holdsDays } = crop.harvest;
  const after = cuts
    ? middle(cuts.everyDays.value) * (cuts.times.value[0] - 1)
    : (bearsDays?.value[1] ?? holdsDays.value / 2);
  return (ripe ?? day) - day + after;
}

/** The most sowings that are in their place at once, which is the number of parts of the row. At least 1. */
function mostAtOnce(context: SowingContext, sowings: readonly SuccessionSowing[]): number {
  const spans = sowings.map((sowing) => ({
    from: sowing.day,
    to: sowing.day + daysInPlace(context, sowing),
  }));
  const standingCounts = spans.map(
    ({ from }) => spans.filter((other) => other.from <= from && other.to > from).length,
  );
  return Math.max(1, ...standingCounts);
}

/**
 * How long a piece of the row each sowing takes [cm], so that all at once have room; null where the plan gives no
 * length, or a number of plants for each sowing.
 */
export function rowPerSowingCm(
  context: SowingContext,
  sowings: readonly SuccessionSowing[],
): number | null {
  const row = context.planting.amount?.kind === "plants" ? null : rowCm(context);
  return row === null ? null : row / mostAtOnce(context, sowings);
}
