import type { Day } from "../../base/index.ts";
import { areaM2Of, dripMinutes, litresOn, type Runs, runsOf } from "../growth/watering.ts";
import type { WholeGarden } from "../practices/practice.ts";
import { dryWeeksOf, type WaterNeed } from "../practices/weekly-need.ts";

/**
 * The water that a bed needs in a week [litres]; null where its size or its need is not known. `bed` is a key; null:
 * plants in no bed.
 */
export type BedWater = {
  readonly bed: string | null;
  readonly litres: number | null;
  /** How its drip lines give that; null where it has none. */
  readonly runs: Runs | null;
};

/** A week, by its Monday, in which beds need water, with each bed that does. */
export type WateringWeek = { readonly monday: Day; readonly beds: readonly BedWater[] };

/** The weeks in which the garden needs watering, in order; the watering tasks are made from them. */
export function wateringWeeksOf(garden: WholeGarden): readonly WateringWeek[] {
  return dryWeeksOf(garden).map(({ monday, needs }) => ({ monday, beds: needs.map(bedWaterOf) }));
}

function bedWaterOf({ bed, mm }: WaterNeed): BedWater {
  const unknown = { bed: bed?.key ?? null, litres: null, runs: null };
  const areaM2 = bed && areaM2Of(bed);
  if (!bed || areaM2 === null || mm === null) return unknown;
  const flowLh = bed.drip?.si;
  const runs = flowLh ? runsOf(dripMinutes({ needMm: mm, areaM2, flowLh })) : null;
  return { ...unknown, litres: litresOn(areaM2, mm), runs };
}
