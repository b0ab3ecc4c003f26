import { cropFor } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import type { Problem } from "../problems/problem.ts";
import { isRaised } from "./begin.ts";
import { tell } from "./codes.ts";
import type { Bed, Plan, Planting } from "./plan.ts";

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

/** Seedlings to a tray: cells, or pots where a crop is potted on. Source: common practice: 40 cells, 18 pots of 3 inches. */
const PER_TRAY = { cells: 40, pots: 18 } as const;

/** `bed-too-full` at a planting that alone is more than its bed holds. */
export function roomDoubts(plan: Plan): readonly Problem[] {
  return plan.plantings.flatMap((planting) => {
    const bed = plan.beds.find(({ key }) => key === planting.bed);
    const crop = cropFor(planting);
    return bed && crop ? bedDoubt(planting, crop, bed) : [];
  });
}

/** The distance plants stand at in the row in the end [cm]: as set out, as last thinned, or as sown; 0 where the facts give none. */
export function spacingCm(crop: Crop, { start }: Pick<Planting, "start">): number {
  if (isRaised(start) && crop.settingOut) return crop.settingOut.apartCm.value;
  const thinned = crop.thinnings.at(-1)?.apartCm.value[0];
  return thinned ?? crop.outdoors?.apartCm.value[0] ?? 0;
}

/** The width of bed that one row needs [cm], worked from the sides. */
export function rowRoomCm(crop: Crop, planting: Pick<Planting, "start">): number {
  const apart = spacingCm(crop, planting);
  const rows = crop.outdoors?.rowsCm.value ?? crop.settingOut?.rowsCm.value ?? apart;
  return Math.min(apart * ROWS_PER_SPACING, rows);
}

function bedDoubt(planting: Planting, crop: Crop, bed: Bed): readonly Problem[] {
  const { amount } = planting;
  const apart = spacingCm(crop, planting);
  if (amount === null || amount.kind === "length" || apart === 0) return [];
  if (bed.bags) return bagsDoubt(planting, apart, bed.bags);
  if (!bed.lengthCm || !bed.widthCm) return [];
  const rowCm = rowRoomCm(crop, planting);
  const most =
    amount.kind === "rows"
      ? Math.floor(bed.widthCm.si / rowCm + 0.01)
      : Math.floor((bed.lengthCm.si * bed.widthCm.si) / apart ** 2);
  return amount.count > most ? [tooFull(planting, bed, { count: amount.count, most })] : [];
}

function bagsDoubt(
  planting: Planting,
  apart: number,
  bags: NonNullable<Bed["bags"]>,
): readonly Problem[] {
  const { amount } = planting;
  if (amount?.kind !== "plants") return [];
  const area = Math.PI * (bags.across.si / 2) ** 2;
  const each = Math.max(1, Math.floor(area / (SHARE_IN_BAG * apart ** 2)));
  const most = each * bags.count;
  return amount.count > most ? [tooFull(planting, null, { count: amount.count, most })] : [];
}

function tooFull(
  planting: Planting,
  bed: Bed | null,
  { count, most }: { readonly count: number; readonly most: number },
): Problem {
  const what = planting.amount?.kind === "rows" ? "rows" : "plants";
  return tell(
    "bed-too-full",
    planting.at,
    `${count} ${what} of ${planting.written} stand in ${bed ? `${bed.name}, which holds` : "bags that hold"} about ${most}`,
    "Plant fewer, or give some another bed",
  );
}

/** Trays that a planting's seedlings take in cells or in pots; 0 where it is not raised here, or the plan names no number of plants. */
export function traysFor({ start, amount }: Planting, vessel: "cells" | "pots"): number {
  if (start !== "seed indoors" || amount?.kind !== "plants") return 0;
  return Math.ceil(amount.count / PER_TRAY[vessel]);
}
