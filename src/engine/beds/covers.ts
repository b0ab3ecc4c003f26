import { type Crop, isPestCover, type PestCoverName } from "../../crops/index.ts";
import type { Planting } from "../../garden/model/index.ts";

/** A cover over a crop, and what it keeps off. */
export type Covering = { readonly with: PestCoverName; readonly against: string };

/** Whether a crop draws a pest: its own cover is against it, or the pests are those of its family. */
export function isHost(crop: Crop, pest: string): boolean {
  return pest === familyPests(crop) || crop.covers.some(({ against }) => against === pest);
}

const familyPests = ({ family }: Crop) => `pests of the ${family}`;

/**
 * The covers of a planting: the crop's own, and a net or fabric that the plan asks for, which is assumed to be against
 * the pests of its family where the crop's own are against birds only. Empty where the gardener leaves covering out.
 */
export function coversOver(planting: Planting, crop: Crop): readonly Covering[] {
  if (planting.without.includes("cover")) return [];
  const asked = planting.under.find(isPestCover);
  const own: readonly Covering[] = crop.covers.map((cover) => ({
    with: asked ?? cover.with,
    against: cover.against,
  }));
  const isKnown = own.some(({ against }) => against !== "birds");
  return asked && !isKnown ? [...own, { with: asked, against: familyPests(crop) }] : own;
}
