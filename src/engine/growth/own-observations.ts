import type { Observation } from "../../garden/index.ts";

/** What a diary says of each planting, by the diary's list. */
const byDiary = new WeakMap<readonly Observation[], ReadonlyMap<string, readonly Observation[]>>();

const NOTHING: readonly Observation[] = [];

/** What a diary says of a planting, by its key, in its order; the same list each time. */
export function observationsAbout(
  observations: readonly Observation[],
  planting: string,
): readonly Observation[] {
  const known = byDiary.get(observations) ?? groupedByPlanting(observations);
  byDiary.set(observations, known);
  return known.get(planting) ?? NOTHING;
}

function groupedByPlanting(
  observations: readonly Observation[],
): ReadonlyMap<string, readonly Observation[]> {
  const groups = new Map<string, Observation[]>();
  for (const observation of observations) {
    if (!("planting" in observation)) continue;
    const known = groups.get(observation.planting);
    if (known) known.push(observation);
    else groups.set(observation.planting, [observation]);
  }
  return groups;
}
