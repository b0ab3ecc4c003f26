import { type Day, latest, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import type { DateTest } from "./date-decision.ts";
import { lastHarvest } from "./ending.ts";
import { ripeIfStarted } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";

/**
 * Waiting for warm soil stops no sooner than this many days after the frost date.
 * Source: house rule; three weeks is what a short season can spare.
 */
export const STOP_DAYS = 21;

/**
 * Days into a season without frost from which waiting for warm soil and nights is counted. Source: house rule; no season is
 * short there, so waiting goes on until it is nearly midsummer.
 */
const NO_FROST_DAYS = 130;

/**
 * Days of harvest that waiting may not cost: for crops that bear repeatedly, and for the rest. Source: house rule; six
 * weeks, and two.
 */
const PICKING_DAYS = { bearing: 42, once: 14 } as const;

/** The day before which no waiting stops: some weeks after the frost date, and never before the gardener's own day. */
export function firstStop(
  context: SowingContext,
  frost: Day | null,
  own: readonly DateTest[],
): Day {
  const from = frost ?? plus(seasonOf(context.plan).from, NO_FROST_DAYS);
  return latest(plus(from, STOP_DAYS), ...own.map((test) => test.day));
}

/**
 * The day on which waiting stops: the first stop, or in a longer season the last day on which a start can still be
 * picked for weeks in a usual year. So a long season waits for warm soil and a short one does not.
 */
export function stopDay(context: SowingContext, first: Day): Day {
  const end = lastHarvest(context, first);
  if (end === null || !isInTime(context, first, end)) return first;
  let [early, late] = [first, end];
  while (early < late) {
    const day = plus(early, Math.ceil((late - early) / 2));
    if (isInTime(context, day, end)) early = day;
    else late = plus(day, -1);
  }
  return early;
}

function isInTime(context: SowingContext, day: Day, end: Day): boolean {
  const ripe = ripeIfStarted(context, day);
  const { kind } = context.crop.harvest;
  const picking = kind === "again and again" ? PICKING_DAYS.bearing : PICKING_DAYS.once;
  return ripe !== null && plus(ripe, picking) <= end;
}
