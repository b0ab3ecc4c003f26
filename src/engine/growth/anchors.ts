import type { Day } from "../../base/days/day.ts";
import type { ObservedStage } from "../../garden/diary/observation.ts";

/** What a day was reckoned from; whatever hangs on it hangs on these too. */
export type Basis =
  | "last frost"
  | "first frost"
  | "soil"
  | "warmth"
  | "heat"
  | "cold"
  | "day length"
  | "age"
  | "given"
  | "seen"
  | "time of year"
  | "place free";

/** The acts that start a clock, and the stages a gardener sees. */
export type AnchorAct = "start" | "set out" | "end" | ObservedStage;

/** The day of an act: from the diary, as it was placed, or given in the plan. `task` is the id of the task placed. */
export type Anchor = {
  readonly day: Day;
  readonly from: "diary" | "placed" | "given";
  readonly basis: readonly Basis[];
  readonly task: string | null;
};

/** All that growth knows of the past, by planting, sowing (from 1) and act. */
export type Anchors = ReadonlyMap<string, Anchor>;

/** The key of an anchor in Anchors. */
export function anchorKey(planting: string, sowing: number, act: AnchorAct): string {
  return `${planting}|${sowing}|${act}`;
}

/** Grounds without repeats, in the order they first stand. */
export function combineBasis(...lists: readonly (readonly Basis[])[]): readonly Basis[] {
  const all: Basis[] = [];
  for (const list of lists) for (const basis of list) if (!all.includes(basis)) all.push(basis);
  return all;
}
