import type { Day } from "../../base/index.ts";
import type { ObservedStage } from "../../garden/index.ts";

/** What a day was calculated from; whatever depends on the day depends on these too. */
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

/** The acts that start a clock, and the stages that a gardener sees. */
export type AnchorAct = "start" | "set out" | "end" | ObservedStage;

/** The day of an act: from the diary, from the schedule, or from the plan. `task` is the id of the scheduled task. */
export type Anchor = {
  readonly day: Day;
  readonly from: "diary" | "placed" | "given";
  readonly basis: readonly Basis[];
  readonly task: string | null;
};

/** Everything that growth knows of the past, by planting, sowing (from 1) and act. */
export type Anchors = ReadonlyMap<string, Anchor>;

/** The most sowings of one planting in a season. Source: house rule: once a week from spring to midsummer. */
export const MOST_SOWINGS = 12;

/**
 * The highest number that a sowing can have: sowings which a hot summer leaves out keep their numbers, so that those of
 * autumn come after them. Source: house rule: once a week for a year.
 */
export const LAST_SOWING_NUMBER = 52;

/** The key of an anchor in Anchors. */
export function anchorKey(planting: string, sowing: number, act: AnchorAct): string {
  return `${planting}|${sowing}|${act}`;
}

/** Bases without repeats, in the order of their first occurrence. */
export function combineBasis(...lists: readonly (readonly Basis[])[]): readonly Basis[] {
  const [only, other] = lists;
  if (only && !other && only.every((basis, i) => only.indexOf(basis) === i)) return only;
  const all: Basis[] = [];
  for (const list of lists) for (const basis of list) if (!all.includes(basis)) all.push(basis);
  return all;
}
