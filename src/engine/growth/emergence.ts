import { type Day, fahrenheit, plus } from "../../base/index.ts";
import { COLUMNS_F, EMERGENCE_ROWS, type EmergenceDays } from "../../crops/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import { dailySwingShare } from "../climate/wave.ts";
import { cached } from "./memo.ts";
import { type DailyAmount, firstDayReaching } from "./sums.ts";

/**
 * The number of days after which seed that has not come up never will. Source: house rule; longer than any crop takes
 * in soil that it may be sown in.
 */
export const GIVE_UP_DAYS = 90;

/** The points of a day's wave at which the rate is taken, from the warmest to the coldest; the way back is the same. */
const POINTS = [1, 3, 5, 7, 9, 11, 13, 15].map((odd) => Math.cos((odd * Math.PI) / 16));

/**
 * The share of the way from sowing to emergence that a day at that mean soil temperature [°C] adds: one over the
 * table's days, between two columns in proportion, averaged over the day's swing [K] to either side of the mean; 0
 * where nothing comes up. Throws for a row the table does not have.
 * Source: Harrington and Minges, University of California, 1954, as in crops/emergence.ts.
 */
export function dailyShare(row: string, soilC: number, swingK = 0): number {
  const rates = ratesOf(row);
  if (swingK === 0) return shareAt(rates, soilC);
  let sum = 0;
  for (const point of POINTS) sum += shareAt(rates, soilC + swingK * point);
  return sum / POINTS.length;
}

/** The columns lie nine degrees apart. */
const STEP_F = COLUMNS_F[1] - COLUMNS_F[0];
const LAST = COLUMNS_F.length - 1;

/** One over each cell's days, row by row. */
const RATES: Readonly<Record<string, readonly number[]>> = Object.fromEntries(
  Object.entries(EMERGENCE_ROWS).map(([row, cells]) => [row, rowOfRates(cells)]),
);

/**
 * The rates of a row: one over its days, 0 where nothing came up. Where nothing was tested, colder than the rest, the rate
 * falls on as it falls between the two coldest that were, to nothing; hotter than the rest, it stays.
 * Source: derived from the same table: a rate that rises in proportion to warmth, as its middle columns do.
 */
function rowOfRates(cells: readonly EmergenceDays[]): readonly number[] {
  const rates = cells.map((cell) => (typeof cell === "number" ? 1 / cell : 0));
  const tested = cells.flatMap((cell, i) => (typeof cell === "number" ? [i] : []));
  const [first = 0] = tested;
  const last = tested.at(-1) ?? LAST;
  for (let i = first - 1; i >= 0 && cells[i] === "untested"; i--)
    rates[i] = Math.max(0, 2 * (rates[i + 1] ?? 0) - (rates[i + 2] ?? 0));
  for (let i = last + 1; i <= LAST && cells[i] === "untested"; i++) rates[i] = rates[last] ?? 0;
  return rates;
}

function ratesOf(row: string): readonly number[] {
  const rates = RATES[row];
  if (!rates) throw new RangeError(`no row ${row} in the table of days to emergence`);
  return rates;
}

function shareAt(rates: readonly number[], soilC: number): number {
  const along = (fahrenheit(soilC) - COLUMNS_F[0]) / STEP_F;
  const near = Math.round(along);
  if (Math.abs(along - near) < 1e-9) return rates[near] ?? 0;
  if (along < 0 || along > LAST) return 0;
  const low = Math.floor(along);
  const rate = rates[low] ?? 0;
  return rate + ((rates[low + 1] ?? 0) - rate) * (along - low);
}

/**
 * The day that seed is up when sown on a day, by each day's share of the way, or null where it would take longer than
 * GIVE_UP_DAYS. At a constant temperature it gives the table's days, rounded up.
 */
export function upOn(sown: Day, share: DailyAmount): Day | null {
  const last = firstDayReaching(share, sown, { wanted: 1, within: GIVE_UP_DAYS });
  return last === null ? null : plus(last, 1);
}

/** Seed in its place: its row of the table, its bed and its depth [cm], in a season that much warmer than usual [K]. */
export type Seed = {
  readonly row: string;
  readonly bed: Bed | null;
  readonly depthCm: number;
  readonly warmerK: number;
};

/** Shares by climate and seed, cached. */
const shares = new WeakMap<Climate, Map<string, Map<number, DailyAmount>>>();

/** Each day's share for seed in a bed of the garden: the soil there, and the part of the air's swing that reaches its depth. */
export function shareIn(climate: Climate, seed: Seed): DailyAmount {
  const byPlace = cached(shares, climate, () => new Map<string, Map<number, DailyAmount>>());
  const place = `${seed.row}|${climate.soilKey(seed.bed)}|${seed.depthCm}`;
  const bySeason = cached(byPlace, place, () => new Map<number, DailyAmount>());
  return cached(bySeason, seed.warmerK, () => calculateShares(climate, seed));
}

function calculateShares(climate: Climate, { row, bed, depthCm, warmerK }: Seed): DailyAmount {
  const felt = dailySwingShare(depthCm);
  return (day) => dailyShare(row, climate.soilC(day, bed, warmerK), climate.swingK(day) * felt);
}
