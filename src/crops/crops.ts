import { BEET_FAMILY } from "./beets.ts";
import { CABBAGE_FAMILY } from "./cabbages.ts";
import { CARROT_FAMILY } from "./carrots.ts";
import { DAISY_FAMILY } from "./daisies.ts";
import type { Crop } from "./facts.ts";
import { GOURD_FAMILY } from "./gourds.ts";
import { GRASS_FAMILY } from "./grasses.ts";
import { NIGHTSHADES } from "./nightshades.ts";
import { ONION_FAMILY } from "./onions.ts";
import { PEA_FAMILY } from "./peas.ts";

/** Every crop the facts know, by family, then by name. */
export const CROPS: readonly Crop[] = [
  ...BEET_FAMILY,
  ...CABBAGE_FAMILY,
  ...CARROT_FAMILY,
  ...DAISY_FAMILY,
  ...GOURD_FAMILY,
  ...GRASS_FAMILY,
  ...NIGHTSHADES,
  ...ONION_FAMILY,
  ...PEA_FAMILY,
];

const byKey = new Map(CROPS.map((crop) => [crop.key, crop]));
const byName = new Map(
  CROPS.flatMap((crop) =>
    [crop.key, crop.one, crop.many, ...crop.alsoCalled].map((name) => [name, crop] as const),
  ),
);

/** The crop of that key, or null where the facts have none. */
export function cropOf(key: string): Crop | null {
  return byKey.get(key) ?? null;
}

/** The crop that a gardener means by a name of the trade (`beetroot`, `Spuds`), or null. Case and spaces do not matter. */
export function cropNamed(name: string): Crop | null {
  return byName.get(name.trim().toLowerCase().replace(/\s+/g, " ")) ?? null;
}

/** Whether frost kills it, and so whether it is hardened off hour by hour. */
export function isTender(crop: Crop): boolean {
  return crop.frost.value === "tender" || crop.frost.value === "warm loving";
}

/** Every name the facts understand, lower case, sorted. */
export function cropNames(): readonly string[] {
  return [...byName.keys()].sort();
}
