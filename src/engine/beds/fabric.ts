import { FABRIC } from "../../crops/index.ts";

/** What is laid over plants for a night. */
export type Fabric = keyof typeof FABRIC.warmsK;

/** A fabric for a night; `sure` where the least that it gives is enough. */
export type SavingCover = { readonly fabric: Fabric; readonly sure: boolean };

/** Tolerance for sums of degrees converted from °F [K]. */
const NEAR_K = 1e-9;

/** Whether air at one temperature [°C] does no harm to a plant that is hurt below another. */
export function isWarmEnough(airC: number, killsC: number): boolean {
  return airC >= killsC - NEAR_K;
}

/**
 * The lightest cover that keeps a plant that is hurt below one temperature [°C] safe in air at another [°C]; null where
 * none does. Two layers do not count, because the second adds little to the first.
 * Source: FABRIC; two layers: common practice.
 */
export function coverWarmEnough(airC: number, killsC: number): SavingCover | null {
  const gives = (fabric: Fabric) => FABRIC.warmsK[fabric].value;
  if (isWarmEnough(airC + gives("light fabric")[0], killsC))
    return { fabric: "light fabric", sure: true };
  const [least, most] = gives("heavy fabric");
  if (!isWarmEnough(airC + most, killsC)) return null;
  return { fabric: "heavy fabric", sure: isWarmEnough(airC + least, killsC) };
}
