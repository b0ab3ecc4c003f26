import type { Day } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import type { Planting } from "../../garden/model/index.ts";
import { type Anchor, type Anchors, anchorKey, type Basis, LAST_SOWING_NUMBER } from "./anchors.ts";

/** One list each, so that equal anchors have an equal basis. */
const GIVEN: readonly Basis[] = ["given"];
const SEEN: readonly Basis[] = ["seen"];

const NUMBERS = Array.from({ length: LAST_SOWING_NUMBER }, (_, i) => i + 1);

/** No seed is up sooner than so many days after it went in [days]. Source: common practice; cress and radish in warm soil. */
export const UP_AFTER_DAYS = 3;

/** Whether a sowing that went in on that day can have been up, and so lost, on another. */
export const couldBeLost = (began: Day, lost: Day): boolean => began + UP_AFTER_DAYS <= lost;

/**
 * The anchors with the end of what the diary says is lost: of the sowing that it names, else of all that could be up by
 * then; where none could, of every one.
 */
export function withLosses(anchors: Anchors, observations: readonly Observation[]): Anchors {
  const ends = new Map<string, Anchor>();
  for (const observation of observations) {
    if (observation.kind !== "lost") continue;
    const { planting, sowing, day } = observation;
    const up = NUMBERS.filter((number) => {
      const began = anchors.get(anchorKey(planting, number, "start"));
      return began !== undefined && couldBeLost(began.day, day);
    });
    for (const number of sowing !== null ? [sowing] : up.length > 0 ? up : NUMBERS)
      ends.set(anchorKey(planting, number, "end"), { day, from: "diary", basis: SEEN, task: null });
  }
  return ends.size === 0 ? anchors : new Map([...anchors, ...ends]);
}

/**
 * What is known before anything is scheduled: plantings in the ground since before, and what the diary saw. A sighting
 * without a sowing counts for the first that has none yet.
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
