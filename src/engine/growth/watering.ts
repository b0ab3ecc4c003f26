import type { Bed } from "../../garden/model/index.ts";

/** The part of a drip line's water that roots get. Source: Card and Bauder, Colorado State University 5.623, 2019. */
export const DRIP_EFFICIENCY = 0.9;

/** The litres of a depth of water [mm] on an area [m²]. Source: geometry, a litre on a square metre is a millimetre. */
export function litresOn(areaM2: number, depthMm: number): number {
  return areaM2 * depthMm;
}

/** A need and the lines that meet it; `flowLh` is what all lines of the bed give together in an hour [L]. */
export type Drip = {
  readonly needMm: number;
  readonly areaM2: number;
  readonly flowLh: number;
  readonly efficiency?: number;
};

/**
 * How long drip lines must run to give a bed its need [minutes], not rounded; the efficiency is DRIP_EFFICIENCY where
 * it is left out. Throws for lines that give nothing.
 * Source: Determining How Long to Run Drip Irrigation Systems for Vegetables, Penn State Extension, 2013.
 */
export function dripMinutes(drip: Drip): number {
  const { needMm, areaM2, flowLh, efficiency = DRIP_EFFICIENCY } = drip;
  if (!(flowLh > 0)) throw new RangeError(`a flow above nought, not ${flowLh}`);
  return (60 * litresOn(areaM2, needMm)) / (flowLh * efficiency);
}

/** The ground of a bed or of its bags [m²]; null where the plan gives no size. Source: geometry. */
export function areaM2Of({ lengthCm, widthCm, bags }: Bed): number | null {
  if (bags) return bags.count * Math.PI * (bags.across.si / 200) ** 2;
  return lengthCm && widthCm ? (lengthCm.si * widthCm.si) / 1e4 : null;
}

/**
 * A longer run passes the roots [minutes]. Source: Penn State, as dripMinutes: several applications a week; the hour a
 * house rule.
 */
const LONGEST_RUN = 60;

/** How often in the week, and how long each time, to the nearest ten minutes and at least ten. */
export type Runs = { readonly times: number; readonly minutes: number };

/** The most runs in a week: one a day. */
const MOST_RUNS = 7;

/**
 * A week's minutes in the fewest runs of at most an hour; longer ones only where daily runs are not enough. Source: as
 * LONGEST_RUN.
 */
export function runsOf(weekMinutes: number): Runs {
  const times = Math.min(MOST_RUNS, Math.max(1, Math.ceil(toTen(weekMinutes) / LONGEST_RUN)));
  return { times, minutes: toTen(weekMinutes / times) };
}

function toTen(minutes: number): number {
  return Math.max(10, Math.round(minutes / 10) * 10);
}
