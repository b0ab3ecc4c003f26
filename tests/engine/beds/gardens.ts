import { buildYear } from "../../../src/engine/build.ts";
import { horizonOf } from "../../../src/engine/schedule/horizon.ts";
import { type PlantingInYear, plantingsIn, type Year } from "../../../src/engine/year.ts";
import { ALONE, planOf } from "../../gardens.ts";

const HEAD = ALONE.slice(0, ALONE.indexOf("beds:"));

/** The lane's place with one bed of that size and its crops, in a year; nobody named. */
export function bedOf(crops: readonly string[], { year = 2027, is = "12 x 4 ft" } = {}): string {
  const lines = crops.map((crop) => `      - ${crop}\n`).join("");
  return `${HEAD.replace("2027", String(year))}beds:\n  Long bed:\n    is: ${is}\n    crops:\n${lines}`;
}

/** The year of some years' texts, in year order. */
export function yearOf(...texts: readonly string[]): Year {
  const plans = texts.map((text) => planOf(text));
  return buildYear({ id: "quarry-lane", plans, baseline: {} }, horizonOf(plans, 0), {});
}

/** Every planting of those years with its days. */
export function grownIn(...texts: readonly string[]): readonly PlantingInYear[] {
  return plantingsIn(yearOf(...texts));
}
