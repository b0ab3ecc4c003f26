import type { Fact } from "../diary/fact.ts";
import type { Planting } from "../plan/plan.ts";
import { type Anchor, type Anchors, anchorKey } from "./anchors.ts";

/**
 * What is known before anything is placed: what stands in the ground since before, and what the diary saw. A
 * sighting that names no sowing counts for the first that has none yet.
 */
export function remembered(plantings: readonly Planting[], facts: readonly Fact[]): Anchors {
  const anchors = new Map<string, Anchor>();
  for (const { key, inSince } of plantings)
    if (inSince !== null)
      anchors.set(anchorKey(key, 1, "start"), {
        day: inSince,
        from: "given",
        grounds: ["given"],
        task: null,
      });
  const seen = facts
    .flatMap((fact) => (fact.kind === "seen" ? [fact] : []))
    .sort((a, b) => a.day - b.day);
  for (const { planting, stage, sowing, day } of seen) {
    let number = sowing ?? 1;
    while (sowing === null && anchors.has(anchorKey(planting, number, stage))) number += 1;
    anchors.set(anchorKey(planting, number, stage), {
      day,
      from: "diary",
      grounds: ["seen"],
      task: null,
    });
  }
  return anchors;
}
