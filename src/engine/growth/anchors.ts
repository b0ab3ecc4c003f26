import type { Day } from "../../base/days/day.ts";
import type { Stage } from "../../garden/diary/fact.ts";

/** What a day was reckoned from; whatever hangs on it hangs on these too. */
export type Ground =
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
export type Act = "start" | "set out" | "end" | Stage;

/** The day of an act: from the diary, as it was placed, or given in the plan. `task` is the id of the task placed. */
export type Anchor = {
  readonly day: Day;
  readonly from: "diary" | "placed" | "given";
  readonly grounds: readonly Ground[];
  readonly task: string | null;
};

/** All that growth knows of the past, by planting, sowing (from 1) and act. */
export type Anchors = ReadonlyMap<string, Anchor>;

/** The key of an anchor in Anchors. */
export function anchorKey(planting: string, sowing: number, act: Act): string {
  return `${planting}|${sowing}|${act}`;
}

/** Grounds without repeats, in the order they first stand. */
export function allGrounds(...lists: readonly (readonly Ground[])[]): readonly Ground[] {
  const all: Ground[] = [];
  for (const list of lists) for (const ground of list) if (!all.includes(ground)) all.push(ground);
  return all;
}
