import type { Observation } from "../../garden/index.ts";
import type { Planting } from "../../garden/model/index.ts";
import { type Anchor, type Anchors, anchorKey, type Basis, MOST_SOWINGS } from "./anchors.ts";

/** One list each, so that equal anchors have an equal basis. */
const GIVEN: readonly Basis[] = ["given"];
const SEEN: readonly Basis[] = ["seen"];

/** The sowing that was lost, or all there may be where none is named. */
const sowingsOf = (sowing: number | null): readonly number[] =>
  sowing === null ? Array.from({ length: MOST_SOWINGS }, (_, i) => i + 1) : [sowing];

/**
 * What is known before anything is scheduled: plantings in the ground since before, and what the diary saw or lost. A
 * sighting without a sowing counts for the first that has none yet.
 */
export function diaryAnchors(
  plantings: readonly Planting[],
  observations: readonly Observation[],
): Anchors {
  const anchors = new Map<string, Anchor>();
  for (const { key, inSince } of plantings)
    if (inSince !== null)
      anchors.set(anchorKey(key, 1, "start"), {
        day: inSince,
        from: "given",
        basis: GIVEN,
        task: null,
      });
  for (const observation of observations)
    if (observation.kind === "lost")
      for (const sowing of sowingsOf(observation.sowing))
        anchors.set(anchorKey(observation.planting, sowing, "end"), {
          day: observation.day,
          from: "diary",
          basis: SEEN,
          task: null,
        });
  const seen = observations
    .flatMap((observation) => (observation.kind === "seen" ? [observation] : []))
    .sort((a, b) => a.day - b.day);
  for (const { planting, stage, sowing, day } of seen) {
    let number = sowing ?? 1;
    while (sowing === null && anchors.has(anchorKey(planting, number, stage))) number += 1;
    anchors.set(anchorKey(planting, number, stage), {
      day,
      from: "diary",
      basis: SEEN,
      task: null,
    });
  }
  return anchors;
}
