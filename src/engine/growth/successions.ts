import { type Day, plus } from "../../base/days/day.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { MOST_SOWINGS } from "../../garden/plan/doubts.ts";
import { rowCm } from "./amounts.ts";
import type { Growing } from "./growing.ts";
import { refusalOf } from "./limits.ts";
import { plantingMemo } from "./memo.ts";
import { middle } from "./milestones.ts";
import { ripeIfSown } from "./ripe.ts";

/** One of the times a planting is sown: its number, from 1, its day, and the day its harvest begins in a usual season. */
export type Sowing = { readonly number: number; readonly day: Day; readonly ripe: Day | null };

/** Days from the first sowing over which sowings go on where nothing freezes. Source: house rule, half a year. */
const WITHOUT_FROST_DAYS = 183;

const successions = plantingMemo<Day, readonly Sowing[]>();

/**
 * The sowings of a planting that is sown again and again, the first on that day: each on the day whose harvest begins
 * so many days after the one before, by warmth, so that cool weeks lie far apart and warm ones close. One that heat,
 * long days or cold would spoil is left out and the others keep their numbers; none comes too late to be ready, or after the plan's season.
 * Source: University of Connecticut IPM, Scheduling sweet corn plantings: as much warmth between two sowings as the
 * wanted days bring at harvest.
 */
export function successionOf(growing: Growing, first: Day): readonly Sowing[] {
  return successions(growing, first, () => reckon(growing, first));
}

function reckon(growing: Growing, first: Day): readonly Sowing[] {
  const ripe = ripeIfSown(growing, first);
  const sowings: Sowing[] = [{ number: 1, day: first, ripe }];
  const { repeat } = growing.planting;
  if (!repeat || ripe === null) return sowings;
  const most = Math.min(MOST_SOWINGS, repeat.times ?? MOST_SOWINGS);
  const last = Math.min(first + WITHOUT_FROST_DAYS, seasonOf(growing.plan).to);
  let before = first;
  for (let number = 2; number <= most; number++) {
    const wanted = plus(ripe, (number - 1) * repeat.everyDays);
    const day = sownFor(growing, wanted, before);
    const refusal = refusalOf(growing, day);
    if (refusal === "too late" || day > last) break;
    before = day;
    if (refusal === null) sowings.push({ number, day, ripe: ripeIfSown(growing, day) });
  }
  return sowings;
}

/** The first day after `before` whose sowing is not ready before the wanted day. */
function sownFor(growing: Growing, wanted: Day, before: Day): Day {
  let [early, late] = [plus(before, 1), wanted];
  while (early < late) {
    const day = plus(early, Math.floor((late - early) / 2));
    const ripe = ripeIfSown(growing, day);
    if (ripe === null || ripe >= wanted) late = day;
    else early = plus(day, 1);
  }
  return early;
}

/** Days that one sowing holds its place: from its day to the end of its harvest. */
function daysInPlace({ crop }: Growing, { day, ripe }: Sowing): number {
  const { cuts, bearsDays, holdsDays } = crop.harvest;
  const after = cuts
    ? middle(cuts.everyDays.value) * (cuts.times.value[0] - 1)
    : (bearsDays?.value[1] ?? holdsDays.value / 2);
  return (ripe ?? day) - day + after;
}

/** How many sowings stand in their place at once, at the most: into so many parts the row is divided. At least 1. */
function atOnce(growing: Growing, sowings: readonly Sowing[]): number {
  const spans = sowings.map((sowing) => ({
    from: sowing.day,
    to: sowing.day + daysInPlace(growing, sowing),
  }));
  const standing = spans.map(
    ({ from }) => spans.filter((other) => other.from <= from && other.to > from).length,
  );
  return Math.max(1, ...standing);
}

/** How long a piece of the row each sowing takes [cm], so that all that stand at once have room; null where the plan gives no length, or so many plants for each sowing. */
export function pieceCm(growing: Growing, sowings: readonly Sowing[]): number | null {
  const row = growing.planting.amount?.kind === "plants" ? null : rowCm(growing);
  return row === null ? null : row / atOnce(growing, sowings);
}
