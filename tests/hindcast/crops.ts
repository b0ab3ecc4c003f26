import type { Crop } from "../../src/crops/facts.ts";
import { middle } from "../../src/engine/growth/milestones.ts";
import { ours } from "../sources/ours.ts";

/** Crops of the hindcast, by their keys: all that come up by the days table, and potato. */
export const CROPS = [
  ...["beet", "carrot", "lettuce", "tomato", "radish", "cabbage", "turnip", "spinach"],
  ...["pea", "bean", "cucumber", "corn", "parsnip", "parsley", "potato"],
] as const;

/** The packet's days of a crop in the hindcast: the middle of its range, so that nothing but weather is uncertain. */
export function packetOf({ harvest }: Crop): number {
  return middle(harvest.days.value);
}

/** A plan's line for a crop, in the way it usually begins. */
export function lineOf(key: string): string {
  const crop = ours(key);
  return `${crop.one}: 20 plants, ${packetOf(crop)} days`;
}
