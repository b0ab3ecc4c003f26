import type { Day } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import type { SowingContext } from "./sowing-context.ts";

/** Nights from which trays of hardy plants need no roof [°C]. Source: common practice, about 55 °F. */
const WARM_NIGHT_C = 12;

/**
 * Whether hardy plants sown on a day in trays are better off outdoors in light shade: it is summer, as warm there as their seed wants
 * it, and warmer in a house.
 */
export function isRaisedInShade({ crop, climate, bed }: SowingContext, sown: Day): boolean {
  if (!crop.indoors || isTender(crop) || bed?.kind === "greenhouse") return false;
  return (
    climate.airC(sown) >= crop.indoors.soilTempC.value && climate.air(sown).lowC >= WARM_NIGHT_C
  );
}
