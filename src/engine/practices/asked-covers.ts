import { type Day, latest, plus } from "../../base/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { nextAnniversary } from "../growth/autumn.ts";
import { isReached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import {
  type CoverDay,
  type CoverPeriod,
  dayInPlace,
  inTime,
  type LaidCover,
  MAY_STAY_DAYS,
} from "./cover-days.ts";
import { window } from "./task.ts";

/**
 * A cover the plan asks for and the facts do not: on as it goes into its place, cloches two weeks before to warm it. Off for
 * bees; fabric and cloches also when frosts are over, and over what stands for years after its harvest. `before`: how many
 * covers the planting has before this one.
 */
export function coverAskedFor(
  context: SowingContext,
  thing: LaidCover,
  before: number,
): readonly CoverPeriod[] {
  const { inSince } = context.planting;
  const suffix = before === 0 ? "" : `-${thing}`;
  const period = { context, against: null, thing, suffix, offSign: OFF_SIGNS[thing] };
  if (inSince !== null && context.crop.perennial) return overHarvest(period);
  const place = inSince === null ? dayInPlace(context) : coveredSince(context, inSince);
  if (!place) return [];
  const on = thing === "cloche" && inSince === null ? clochesOn(context, place) : place;
  if (on === null) return [];
  return inTime({ ...period, on, off: thing === "net" ? null : afterFrosts(context, place) });
}

const OFF_SIGNS: Readonly<Record<LaidCover, string | null>> = {
  net: null,
  fabric: "Nights stay mild, or the leaves press against it.",
  cloche: "Nights stay mild, or the leaves press against the top.",
};

/** What was sown in an earlier year lies under its cover since then. */
const coveredSince = (context: SowingContext, day: Day): CoverDay => ({
  context,
  window: window(day, day, day),
  basis: ["given"],
  stage: { day, told: "As it went into its place, " },
});

/** Days ahead that cloches are put out. Source: common practice, two weeks, so that the soil is warm by then. */
const CLOCHES_AHEAD_DAYS = 14;

/** Mean air [°C] in which what goes in needs no cloches. Source: house rule, 60 °F. */
const MILD_C = 15.5;

/** Days before the usual first frost by which cloches stand over what went in while it was mild. Source: house rule. */
const BEFORE_FROST_DAYS = 10;

/** Cloches warm what goes in early, and go over late sowings as the frosts come; null over what goes in for the summer. */
function clochesOn(context: SowingContext, place: CoverDay): CoverDay | null {
  const since = place.stage.day;
  const { firstFrost, lastFrost } = context.plan.site;
  const frost = firstFrost?.usual;
  const isLate = frost !== undefined && since >= plus(frost, -SUMMER_DAYS);
  if (!isLate || since <= (lastFrost?.late ?? since - 1))
    return context.climate.airC(since) < MILD_C ? twoWeeksBefore(place) : null;
  const day = latest(since, plus(frost, -BEFORE_FROST_DAYS));
  return {
    context,
    window: window(latest(since, plus(day, -7)), day, plus(day, 10), "earlier"),
    basis: combineBasis(place.basis, ["first frost"]),
    stage: { day: frost, told: "Some days before the usual first frost, " },
  };
}

function twoWeeksBefore(place: CoverDay): CoverDay {
  const day = plus(place.stage.day, -CLOCHES_AHEAD_DAYS);
  return { ...place, window: window(plus(day, -4), day, plus(day, 7)) };
}

/** What goes under its cover so long after the frosts, or later, keeps it till the next spring's [days]. Source: house rule. */
const SUMMER_DAYS = 90;

/** A cover that is asked for lies at least so long [days]. Source: house rule, three weeks: until roots have taken hold. */
const LEAST_DAYS = 21;

/** Nine springs in ten have had their last frost by then, and it has lain for some weeks; null in a place without frost. */
function afterFrosts(context: SowingContext, place: CoverDay): CoverDay | null {
  const frost = context.plan.site.lastFrost;
  if (!frost) return null;
  const since = place.stage.day;
  const day = latest(
    nextAnniversary(frost.late, plus(since, -SUMMER_DAYS)),
    plus(since, LEAST_DAYS),
  );
  return {
    context,
    window: window(plus(day, -7), day, plus(day, MAY_STAY_DAYS)),
    basis: ["last frost"],
    stage: { day, told: "Frosts are over and it has rooted by about " },
  };
}

/** Days before its harvest that what stands for years is covered. Source: house rule; before birds and late frosts find it. */
const BEFORE_HARVEST_DAYS = 14;

function overHarvest(
  period: Pick<CoverPeriod, "context" | "against" | "thing" | "suffix" | "offSign">,
): readonly CoverPeriod[] {
  const { context } = period;
  const ripe = ripeMilestone(context);
  const weeks = context.crop.perennial?.harvestWeeks.value[1] ?? 0;
  if (!isReached(ripe)) return [];
  const at = (day: Day, told: string): CoverDay => ({
    context,
    window: window(plus(day, -4), day, plus(day, 7)),
    basis: ripe.basis,
    stage: { day: ripe.usual, told },
  });
  const on = at(plus(ripe.usual, -BEFORE_HARVEST_DAYS), "Two weeks before its first harvest, ");
  const off = at(plus(ripe.usual, 7 * weeks), "After the weeks of its harvest, from ");
  return [{ ...period, on, off, offSign: "The last of it is picked.", forBees: false }];
}
