import { type Anchors, anchorKey } from "../growth/anchors.ts";
import type { Placed } from "./placed.ts";

/** Anchors with those that placed tasks set; the diary's day is the diary's, and hangs on nothing but having been seen. */
export function anchored(anchors: Anchors, placed: readonly Placed[]): Anchors {
  const more = new Map(anchors);
  for (const { task, day, done } of placed) {
    if (!task.sets) continue;
    const { planting, sowing, act } = task.sets;
    const grounds = done ? (["seen"] as const) : task.grounds;
    more.set(anchorKey(planting, sowing, act), {
      day,
      from: done ? "diary" : "placed",
      grounds,
      task: task.id,
    });
  }
  return more;
}
