import { type Day, plus } from "../../base/index.ts";
import type { Warmth } from "../../crops/index.ts";
import { type Anchor, type AnchorAct, anchorKey } from "./anchors.ts";
import type { SowingContext } from "./sowing-context.ts";
import { upFrom } from "./up.ts";
import { boundsOf, dailyWarmth, packetWarmth, warmthBetween } from "./warmth.ts";

/** How many years back a garden's own harvest is looked for. Source: house rule; after that the seed is different. */
const YEARS_BACK = 5;

/**
 * How far a garden's own figure may be from the packet's, as a factor either way. Source: house rule; beyond it one of
 * the days must be wrong.
 */
const MOST_BELIEVABLE_RATIO = 2;

/**
 * The warmth that a planting took in this garden: the year, and the warmth from the day it counts to the day before
 * first ripe [degree-C days].
 */
export type GardenWarmth = { readonly year: number; readonly warmth: number };

/**
 * The warmth that the planting of the same name took in the newest earlier year whose first ripe day the diary has;
 * null where there is none, or where it is so far from the packet's (of `days` days) that a day must be wrong.
 */
export function ownWarmth(context: SowingContext, days: number): GardenWarmth | null {
  const { warmth } = context.crop;
  if (!warmth || !hasRipened(context)) return null;
  const { year } = context.plan;
  for (let back = 1; back <= YEARS_BACK; back++) {
    const took = warmthTakenIn(context, year - back, warmth);
    if (took !== null && isBelievable(took / packetWarmth(days, warmth)))
      return { year: year - back, warmth: took };
  }
  return null;
}

/** Whether any year's diary has a first ripe day; cached. */
const ripened = new WeakMap<SowingContext["anchors"], boolean>();

function hasRipened({ anchors }: SowingContext): boolean {
  const known = ripened.get(anchors);
  if (known !== undefined) return known;
  const has = [...anchors].some(
    ([key, { from }]) => from === "diary" && key.endsWith(anchorKey("", 1, "first ripe")),
  );
  ripened.set(anchors, has);
  return has;
}

const isBelievable = (ratio: number) =>
  ratio <= MOST_BELIEVABLE_RATIO && ratio >= 1 / MOST_BELIEVABLE_RATIO;

function warmthTakenIn(context: SowingContext, year: number, warmth: Warmth): number | null {
  const key = context.planting.key.replace(/^\d+/, String(year));
  const known = (act: AnchorAct): Anchor | null =>
    context.anchors.get(anchorKey(key, 1, act)) ?? null;
  const ripe = known("first ripe");
  if (ripe?.from !== "diary") return null;
  const from = warmthCountStart(context, known);
  if (from === null || from >= ripe.day) return null;
  const daily = dailyWarmth(context.climate, boundsOf(warmth), 0);
  return warmthBetween(daily, from, plus(ripe.day, -1));
}

/** The day from which outdoor warmth counted then, by the rules of growth/clock.ts. */
function warmthCountStart(
  context: SowingContext,
  known: (act: AnchorAct) => Anchor | null,
): Day | null {
  const { harvest } = context.crop;
  const start = known("start")?.day ?? null;
  if (harvest.from === "planting") return start;
  if (context.planting.start !== "seed outdoors") return known("set out")?.day ?? null;
  return known("up")?.day ?? (start === null ? null : upFrom(context, start));
}
