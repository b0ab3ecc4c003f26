import type { Day } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import type { Observation } from "../../garden/index.ts";
import type { Bed, Plan, Planting } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import { type Anchor, type AnchorAct, type Anchors, anchorKey } from "./anchors.ts";

/** One sowing of a planting in its garden, with everything known of it so far. */
export type SowingContext = {
  readonly plan: Plan;
  readonly planting: Planting;
  readonly crop: Crop;
  readonly bed: Bed | null;
  /** 1 for the first sowing; more only where it is sown again. */
  readonly sowing: number;
  /** The climate that its bed stands in: under glass that of the house. */
  readonly climate: Climate;
  readonly anchors: Anchors;
  /** What the diary says of this planting, in day order. */
  readonly observations: readonly Observation[];
  /** Whether anybody is at home that day; always true where the plan names nobody. */
  readonly around: (day: Day) => boolean;
  /** This year's season as far as it is known; null: nobody was asked for the weather. */
  readonly soFar: SeasonSoFar | null;
};

/**
 * The day as of which this year's weather is known, and the day for which a task (by id) was told last; null: it never was. Only what
 * must go on from where it stands asks for that, as hardening off does.
 */
export type SeasonSoFar = {
  readonly asOf: Day;
  readonly toldOn: (task: string) => Day | null;
};

/** The anchor of an act of this sowing, or null where it has none yet. */
export function anchorOf(context: SowingContext, act: AnchorAct): Anchor | null {
  return context.anchors.get(keyOf(context, act)) ?? null;
}

/** Keys by planting, sowing and act, cached: growth asks for many thousands, and a new string is hashed anew each time. */
const keys = new WeakMap<Planting, Map<AnchorAct, string>[]>();

function keyOf({ planting, sowing }: SowingContext, act: AnchorAct): string {
  const bySowing = keys.get(planting) ?? [];
  const byAct = bySowing[sowing] ?? new Map<AnchorAct, string>();
  const known = byAct.get(act);
  if (known !== undefined) return known;
  const key = anchorKey(planting.key, sowing, act);
  byAct.set(act, key);
  bySowing[sowing] = byAct;
  keys.set(planting, bySowing);
  return key;
}

/** From when it is in its place: set out, else sown or planted there; null where that is not known yet. */
export const inPlace = (context: SowingContext): Anchor | null =>
  anchorOf(context, "set out") ?? anchorOf(context, "start");
