import type { Crop } from "../../crops/index.ts";
import { type Bed, isRaised, type Planting } from "../../garden/model/index.ts";

/**
 * How much of the square of its spacing a plant needs in a bag.
 * Source: house rule: roots go down in a bag and tops hang over its rim; it allows the trade's three or four
 * potatoes to a bag 16 inches across.
 */
const SHARE_IN_BAG = 0.5;

/**
 * Rows of a bed that is worked from its sides need no path: they may stand twice as near as the plants in them.
 * Source: house rule: the rows of published tables are those of open ground, with room to walk.
 */
const ROWS_PER_SPACING = 2;

/**
 * The final distance of plants in the row [cm]: as set out, as last thinned, or as sown; 0 where the facts give none.
 */
export function spacingCm(crop: Crop, { start }: Pick<Planting, "start">): number {
  if (isRaised(start) && crop.settingOut) return crop.settingOut.apartCm.value;
  const thinned = crop.thinnings.at(-1)?.apartCm.value[0];
  return thinned ?? crop.outdoors?.apartCm.value[0] ?? 0;
}

/** The least distance of rows in a bed [cm], of plants that stand so far apart in the row. */
export function rowCm(crop: Crop, apartCm: number): number {
  return Math.min(apartCm * ROWS_PER_SPACING, crop.outdoors?.rowsCm.value ?? apartCm);
}

/**
 * How much of a planting its bed has room for once grown, counted as the plan counts it: rows, plants, or centimetres
 * of row; not rounded. Null where the bed's size, the amount or the crop's spacing is not known.
 */
export function bedCapacity(planting: Planting, crop: Crop, bed: Bed): number | null {
  const apart = spacingCm(crop, planting);
  const kind = planting.amount?.kind;
  if (kind === undefined || apart === 0) return null;
  if (bed.bags) return kind === "plants" ? inBags(apart, bed.bags) : null;
  if (!bed.lengthCm || !bed.widthCm) return null;
  if (kind === "plants") return (bed.lengthCm.si * bed.widthCm.si) / apart ** 2;
  const rows = bed.widthCm.si / rowCm(crop, apart);
  return kind === "rows" ? rows : rows * bed.lengthCm.si;
}

function inBags(apart: number, { across, count }: NonNullable<Bed["bags"]>): number {
  const area = Math.PI * (across.si / 2) ** 2;
  return Math.max(1, Math.floor(area / (SHARE_IN_BAG * apart ** 2))) * count;
}

/** The share of its bed that a planting takes once grown, 1 where it fills it; null where amount, spacing or the bed's size is not known. */
export function bedShare(planting: Planting, crop: Crop, bed: Bed): number | null {
  const { amount } = planting;
  const most = bedCapacity(planting, crop, bed);
  if (amount === null || most === null) return null;
  return (amount.kind === "length" ? amount.length.si : amount.count) / most;
}
