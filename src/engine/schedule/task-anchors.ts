import { type Anchors, anchorKey } from "../growth/anchors.ts";
import type { ScheduledTask } from "./scheduled-task.ts";

/** Anchors with those that placed tasks set; the diary's day is the diary's, and hangs on nothing but having been seen. */
export function withTaskAnchors(anchors: Anchors, scheduled: readonly ScheduledTask[]): Anchors {
  const more = new Map(anchors);
  for (const { task, day, done } of scheduled) {
    if (!task.sets) continue;
    const { planting, sowing, act } = task.sets;
    const basis = done ? (["seen"] as const) : task.basis;
    more.set(anchorKey(planting, sowing, act), {
      day,
      from: done ? "diary" : "placed",
      basis,
      task: task.id,
    });
  }
  return more;
}
