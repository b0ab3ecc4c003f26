import { type Day, earliest, latest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { lastHarvest } from "../growth/ending.ts";
import { isReached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { winterEndOf } from "../growth/through-winter.ts";
import { picksOf } from "../schedule/planting-tasks.ts";
import type { ScheduledTask } from "../schedule/scheduled-task.ts";
import type { FullAndEnd } from "./planting-record.ts";

/**
 * What the end of a sowing depends on: its planting's tasks, the day from which it grows in its place, and the day set
 * for its end, null where there is none.
 */
export function fullAndEnd(
  context: SowingContext,
  tasks: readonly ScheduledTask[],
  { inPlace, end }: { readonly inPlace: Day; readonly end: Day | null },
): FullAndEnd {
  const ripe = ripeDays(context, tasks, inPlace);
  return ripe
    ? { ready: true, full: ripe.full, ...endDays(context, ripe, end) }
    : { ready: false, ...unripe(context, inPlace) };
}

/** The first harvest, the last scheduled one, and the last good day of that one. */
type Ripe = { readonly full: Day; readonly last: Day; readonly waits: Day };

/** Null where it does not ripen (though something may be taken before its end), and where no harvest is scheduled. */
function ripeDays(context: SowingContext, tasks: readonly ScheduledTask[], up: Day): Ripe | null {
  const ripe = ripeMilestone(context);
  const picks = picksOf(tasks, context.sowing);
  if (!isReached(ripe)) return null;
  if (picks.length === 0 && !context.planting.without.includes("harvest")) return null;
  const days = picks.map(({ day }) => day);
  const full = latest(plus(up, 1), days.length > 0 ? earliest(...days) : ripe.usual);
  const waits = picks.map((pick) => pick.window.latest);
  return { full, last: latest(full, ...days), waits: latest(full, ...waits) };
}

/**
 * Days over which a crop that never ripens fades. Source: house rule; the weather ends it, and is no more certain than
 * frost.
 */
const FADES_DAYS = 21;

/**
 * A sowing that is not ready before its end: it grows, and fades towards the last day on which a harvest would still be
 * worthwhile, or the last of the season.
 */
function unripe(context: SowingContext, up: Day): Omit<FullAndEnd, "ready"> {
  const last = lastHarvest(context, up) ?? latest(up, seasonOf(context.plan).to);
  const full = latest(plus(up, 1), plus(last, -FADES_DAYS));
  return { full, ends: full, gone: latest(plus(full, CLEARED_DAYS), last) };
}

/** The least number of days in which a bed is cleared after the last harvest. Source: house rule. */
const CLEARED_DAYS = 4;

type OccupancyEnd = Pick<FullAndEnd, "ends" | "gone">;

/**
 * A crop that is picked repeatedly ends when it has borne for its time, any other between its last harvest and the last
 * day that it keeps, or with the winter that it is harvested through; what is left ends with the year.
 */
function endDays(
  context: SowingContext,
  { full, last, waits }: Ripe,
  end: Day | null,
): OccupancyEnd {
  const winter = winterEndOf(context, full);
  if (winter) {
    const ends = latest(full, last, end ?? winter.day);
    return { ends, gone: latest(plus(ends, CLEARED_DAYS), plus(winter.day, CLEARED_DAYS)) };
  }
  const year = lastHarvest(context, full);
  const bears = context.crop.harvest.kind === "again and again";
  const { ends, gone } = bears ? bearingEnds(context, full, end) : { ends: last, gone: waits };
  if (year === null || (bears && isTender(context.crop)))
    return { ends, gone: latest(plus(ends, CLEARED_DAYS), gone) };
  const over = latest(bears ? full : last, earliest(ends, year));
  return { ends: over, gone: latest(plus(over, CLEARED_DAYS), earliest(gone, year)) };
}

/**
 * Days from the first picking to the last where the facts have none: least and most. Source: house rule; a picture
 * needs some length.
 */
const DEFAULT_BEARING_DAYS = [60, 90] as const;

/** How long it bears; frost may end a tender crop sooner, between its early and its late date. */
function bearingEnds(context: SowingContext, full: Day, end: Day | null): OccupancyEnd {
  const { bearsDays } = context.crop.harvest;
  const [least, most] = bearsDays?.value ?? DEFAULT_BEARING_DAYS;
  const borne = { ends: plus(full, least), gone: plus(full, Math.max(least + 1, most)) };
  if (context.climate.underGlass && end !== null)
    return { ends: end, gone: plus(end, CLEARED_DAYS) };
  const frost = frostsAt(context.plan.site, context.bed).firstFrost;
  if (frost === null || frost.late <= full)
    return end === null || end <= borne.ends ? borne : { ends: end, gone: plus(end, CLEARED_DAYS) };
  const taken = { ends: latest(full, frost.early), gone: latest(plus(full, 1), frost.late) };
  if (bearsDays === null) return taken;
  if (!isTender(context.crop)) return borne;
  return { ends: earliest(borne.ends, taken.ends), gone: earliest(borne.gone, taken.gone) };
}
