import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { cropOf } from "../../src/crops/crops.ts";
import type { Crop, NumberRange } from "../../src/crops/facts.ts";

/** Our crop of that key; throws where the facts have none, so that no comparison is skipped. */
export function ours(key: string): Crop {
  const crop = cropOf(key);
  if (!crop) throw new Error(`no ${key} in the facts`);
  return crop;
}

/** A fact that a crop must have here. */
export function must<Fact>(fact: Fact | null | undefined): Fact {
  if (fact === null || fact === undefined) throw new Error("the crop has no such figure");
  return fact;
}

/** A range in centimetres as inches. */
export const inch = ([least, most]: NumberRange): NumberRange => [least / 2.54, most / 2.54];

/** One temperature [°C] as a span in °F. */
export function degrees(celsius: number): NumberRange {
  return [fahrenheit(celsius), fahrenheit(celsius)];
}

/** The soil [°F] in which a crop is sown, or set out where it is never sown outdoors. */
export function soilMinF(key: string): NumberRange {
  const { outdoors, settingOut } = ours(key);
  return degrees(must(outdoors?.soilMinC ?? settingOut?.soilMinC).value);
}
