import { type Day, plus } from "../../base/days/day.ts";
import { autumnAfter } from "./ending.ts";
import type { Growing } from "./growing.ts";
import { reached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";

/**
 * The day a sowing is over of itself: it has borne for as long as its kind does, or kept as long as it may; null where it
 * bears till frost, where frost may come first (one autumn in ten), and where it does not get ready.
 */
export function overOn(growing: Growing): Day | null {
  const { kind, bearsDays, holdsDays } = growing.crop.harvest;
  const ripe = ripeMilestone(growing);
  if (!reached(ripe) || (kind === "again and again" && bearsDays === null)) return null;
  const over = plus(ripe.usual, bearsDays?.value[1] ?? holdsDays.value);
  const autumn = autumnAfter(growing, ripe.usual);
  return autumn === null || over < autumn.early ? over : null;
}
