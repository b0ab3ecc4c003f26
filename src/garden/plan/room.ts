import type { Problem } from "../../base/problems/problem.ts";
import { cropFor } from "../../crops/crops.ts";
import type { Crop } from "../../crops/facts.ts";
import type { Bed, Plan, Planting } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { isRaised } from "./planting-start.ts";

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

/** `bed-too-full` at a planting that alone is more than its bed holds; what several take together hangs on the season, and is found in beds/. */
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

/**
 * How much of it a bed holds once grown, counted as the plan counts it: rows, plants, or centimetres of row; not rounded.
 * Null where the bed's size, the amount or the crop's spacing is not known.
 */
function capacity(planting: Planting, crop: Crop, bed: Bed): number | null {
  const apart = spacingCm(crop, planting);
  const kind = planting.amount?.kind;
  if (kind === undefined || apart === 0) return null;
  if (bed.bags) return kind === "plants" ? inBags(apart, bed.bags) : null;
  if (!bed.lengthCm || !bed.widthCm) return null;
  if (kind === "plants") return (bed.lengthCm.si * bed.widthCm.si) / apart ** 2;
  const rowCm = Math.min(apart * ROWS_PER_SPACING, crop.outdoors?.rowsCm.value ?? apart);
  const rows = bed.widthCm.si / rowCm;
  return kind === "rows" ? rows : rows * bed.lengthCm.si;
}

function inBags(apart: number, { across, count }: NonNullable<Bed["bags"]>): number {
  const area = Math.PI * (across.si / 2) ** 2;
  return Math.max(1, Math.floor(area / (SHARE_IN_BAG * apart ** 2))) * count;
}

/** The share of its bed that a planting takes once grown, 1 where it fills it; null where amount, spacing or the bed's size is not known. */
export function bedShare(planting: Planting, crop: Crop, bed: Bed): number | null {
  const { amount } = planting;
  const most = capacity(planting, crop, bed);
  if (amount === null || most === null) return null;
  return (amount.kind === "length" ? amount.length.si : amount.count) / most;
}

function bedDoubt(planting: Planting, crop: Crop, bed: Bed): readonly Problem[] {
  const { amount } = planting;
  const limit = capacity(planting, crop, bed);
  if (amount === null || amount.kind === "length" || limit === null) return [];
  const most = Math.floor(limit + 0.01);
  const where = bed.bags ? null : bed;
  return amount.count > most ? [tooFull(planting, where, { count: amount.count, most })] : [];
}

function tooFull(
  planting: Planting,
  bed: Bed | null,
  { count, most }: { readonly count: number; readonly most: number },
): Problem {
  const what = planting.amount?.kind === "rows" ? "rows" : "plants";
  return diagnostic(
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
