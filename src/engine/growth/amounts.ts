import { type Crop, emergenceShare, seedlingsRow } from "../../crops/index.ts";
import { spacingCm } from "../rules/spacing.ts";
import type { SowingContext } from "./sowing-context.ts";

/** What amounts are calculated from: a planting, its crop and its bed. */
export type PlantingInBed = Pick<SowingContext, "planting" | "crop" | "bed">;

/** Seeds beyond the calculated number, for mice and mistakes. Source: house rule, a tenth. */
const SPARE = 1.1;
/** The share of seeds that come up where no table has the crop or its soil. Source: house rule, three in four. */
const USUAL_SHARE = 0.75;
/** The most that sowing is thickened where few come up. Source: house rule: beyond it, it is too cold or too hot. */
const LEAST_SHARE = 0.25;
/** Seeds to a cell indoors, the weaker of them pinched off. Source: common practice. */
const SEEDS_A_CELL = 2;
/** Cloves that a bulb of seed garlic gives that are worth planting. Source: common practice, six to ten, so that nobody runs short. */
const CLOVES_A_BULB = 8;
/**
 * Tolerance for a bed whose length is a whole number of spacings, because of rounding between inches and centimetres.
 */
const NEAR = 1e-6;

/** The size of a bed and the spacing of a crop, all in centimetres; rows run along the length. */
export type BedMeasures = {
  readonly lengthCm: number;
  readonly widthCm: number;
  readonly apartCm: number;
  readonly rowsCm: number;
};

/** Rows of a bed, plants in a row, and plants in all; 0 where the bed is narrower than a plant needs. */
export type RowLayout = { readonly rows: number; readonly perRow: number; readonly plants: number };

/**
 * How many plants fit in a bed in straight rows, with half the plants' spacing free along every edge.
 * Source: usual extension advice on raised beds, from memory.
 */
export function rowLayoutOf({ lengthCm, widthCm, apartCm, rowsCm }: BedMeasures): RowLayout {
  const along = (side: number, step: number) =>
    Math.max(0, Math.floor((side - apartCm) / step + NEAR) + 1);
  const rows = along(widthCm, rowsCm);
  const perRow = along(lengthCm, apartCm);
  return { rows, perRow, plants: rows * perRow };
}

/**
 * The length of row a planting takes [cm]: its rows along the bed, its own length, or its plants at their spacing; null
 * where the plan says neither how much nor how long the bed is.
 */
export function rowCm({ planting, crop, bed }: PlantingInBed): number | null {
  const { amount } = planting;
  if (amount === null) return null;
  if (amount.kind === "length") return amount.length.si;
  if (amount.kind === "plants") return amount.count * spacingCm(crop, planting);
  return bed?.lengthCm ? amount.count * bed.lengthCm.si : null;
}

/** How many plants a planting is to give in the end: those it names, or its length of row at their spacing; null where the plan does not say. */
export function plantsOf(plantingInBed: PlantingInBed): number | null {
  const { planting, crop } = plantingInBed;
  if (planting.amount?.kind === "plants") return planting.amount.count;
  const length = rowCm(plantingInBed);
  const apart = spacingCm(crop, planting);
  return length === null || apart === 0 ? null : Math.floor(length / apart + NEAR);
}

/**
 * The share of a crop's seeds, 0.25 to 1, that can be expected to come up in soil of that temperature [°C]. Source:
 * crops/seedlings.ts, else three in four.
 */
export function expectedShare(crop: Crop, soilC: number): number {
  const row = seedlingsRow(crop);
  const share = row === null ? null : emergenceShare(row, soilC);
  return Math.max(LEAST_SHARE, share ?? USUAL_SHARE);
}

/**
 * How far apart seed is sown outdoors [cm] so that enough come up in soil of that temperature [°C]: as the facts say,
 * or thicker where too few would come up; null for a crop never sown outdoors.
 */
export function sowApartCm({ planting, crop }: PlantingInBed, soilC: number): number | null {
  if (crop.outdoors === null) return null;
  const [least, most] = crop.outdoors.apartCm.value;
  return Math.min((least + most) / 2, spacingCm(crop, planting) * expectedShare(crop, soilC));
}

/**
 * Seeds for one sowing of a planting into soil of that temperature [°C], with a tenth to spare: along its row outdoors,
 * two or more to a cell indoors; null for what is not seed, or where the plan does not say how much.
 */
export function seedsFor(plantingInBed: PlantingInBed, soilC: number): number | null {
  const { start } = plantingInBed.planting;
  if (start === "seed indoors" || start === "winter-sown")
    return seedsIndoors(plantingInBed, soilC);
  if (start !== "seed outdoors") return null;
  const length = rowCm(plantingInBed);
  const apart = sowApartCm(plantingInBed, soilC);
  return length === null || apart === null ? null : Math.ceil((length / apart) * SPARE);
}

function seedsIndoors(plantingInBed: PlantingInBed, soilC: number): number | null {
  const plants = plantsOf(plantingInBed);
  if (plants === null) return null;
  const each = Math.max(SEEDS_A_CELL, 1 / expectedShare(plantingInBed.crop, soilC));
  return Math.ceil(plants * each * SPARE);
}

/** Bulbs of seed garlic to buy for so many cloves, to the nearest whole one and at least one. */
export function bulbsFor(cloves: number): number {
  return Math.max(1, Math.round(cloves / CLOVES_A_BULB));
}

const ROUND_COUNTS = [20, 50, 100, 200, 300, 500, 1000];

/** A number of seeds rounded up as one says it: 20, 50, 100, 200, 300, 500, 1000, then whole thousands. */
export function roundSeedCount(count: number): number {
  return ROUND_COUNTS.find((round) => round >= count) ?? Math.ceil(count / 1000) * 1000;
}
