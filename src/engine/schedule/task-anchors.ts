import { type Anchors, anchorKey, type Basis } from "../growth/anchors.ts";
import type { ScheduledTask } from "./scheduled-task.ts";

/** One list, so that equal anchors have an equal basis. */
const SEEN: readonly Basis[] = ["seen"];

/** The anchors with those that scheduled tasks set; a day from the diary depends on nothing else. */
export function withTaskAnchors(anchors: Anchors, scheduled: readonly ScheduledTask[]): Anchors {
  const more = new Map(anchors);
  for (const { task, day, done } of scheduled) {
    if (!task.sets) continue;
    const { planting, sowing, act } = task.sets;
    const basis = done ? SEEN : task.basis;
    more.set(anchorKey(planting, sowing, act), {
      day,
      from: done ? "diary" : "placed",
      basis,
      task: task.id,
    });
  }
  return more;
}
