import { capital } from "../base/index.ts";
import { CROPS, type Crop } from "../crops/index.ts";
import type { AmountUnit } from "../garden/model/index.ts";

export { nextYear } from "../garden/index.ts";

/**
 * A crop as a form offers it: its key, its name as a heading says it, what a plan calls one of it, whether most gardens have it, the
 * ways it can begin with the usual one first, what its amount usually counts, and whether it may stand there from an earlier year.
 */
export type CropName = {
  readonly key: string;
  readonly name: string;
  readonly one: string;
  readonly popular: boolean;
  readonly starts: readonly string[];
  readonly unit: AmountUnit;
  readonly mayStand: boolean;
};

/** What most kitchen gardens have. Source: common practice. */
const POPULAR = new Set([
  ...["tomato", "lettuce", "carrot", "bean", "pea", "potato", "summer-squash", "cucumber"],
  ...["onion", "garlic", "beet", "radish", "spinach", "kale", "pepper", "basil", "parsley"],
  ...["broccoli", "cabbage", "chard", "leek", "corn", "pumpkin", "strawberry"],
]);

/** Every crop that a plan can name, by the name of many of it, in the order of the alphabet. */
export function cropNames(): readonly CropName[] {
  return CROPS.map((crop) => ({
    ...{ key: crop.key, one: crop.one, name: capital(crop.many), popular: POPULAR.has(crop.key) },
    ...{ starts: crop.starts, unit: unitOf(crop) },
    mayStand: crop.perennial !== null || crop.overwinter !== null,
  })).sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** What is planted, where it is no seed; else plants, and rows of what is sown where it grows. */
function unitOf({ starts, settingOut }: Crop): AmountUnit {
  const [usual] = starts;
  if (usual === "cloves" || usual === "tubers" || usual === "sets" || usual === "crowns")
    return usual;
  return usual === "seed outdoors" && settingOut === null ? "rows" : "plants";
}
