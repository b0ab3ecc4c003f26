import type { Day } from "../../base/days/day.ts";
import type { Observation } from "../../garden/diary/observation.ts";
import type { Bed } from "../../garden/model/plan.ts";

/** Days for which a soil temperature that was measured corrects the estimate, fading to nothing. Source: house rule. */
export const MEASURED_LASTS_DAYS = 14;

/** Soil [°C] of a day in a bed, or in open ground where that is null, in a season so much warmer than usual [K]. */
export type SoilTemperatureFn = (day: Day, bed: Bed | null, warmerK?: number) => number;

/** What the diary measured of the soil: whether anything in a bed, and how much warmer [K] than the estimate that makes it. */
export type MeasuredSoil = {
  readonly appliesTo: (bed: Bed | null) => boolean;
  readonly correctionK: SoilTemperatureFn;
};

/**
 * How much warmer than the estimate the soil is, by what was measured last in that bed or in none. Full on its day,
 * whatever the season, fading over MEASURED_LASTS_DAYS.
 */
export function measuredSoil(
  observations: readonly Observation[],
  estimate: SoilTemperatureFn,
): MeasuredSoil {
  const measured = observations
    .flatMap((observation) =>
      observation.kind === "measured" && observation.what === "soil" ? [observation] : [],
    )
    .sort((a, b) => a.day - b.day);
  const counts = (observation: (typeof measured)[number], bed: Bed | null) =>
    observation.bed === null || observation.bed === bed?.key;
  const correctionK: SoilTemperatureFn = (day, bed, warmerK = 0) => {
    const last = measured.findLast(
      (observation) =>
        day >= observation.day &&
        day < observation.day + MEASURED_LASTS_DAYS &&
        counts(observation, bed),
    );
    if (!last) return 0;
    const left = 1 - (day - last.day) / MEASURED_LASTS_DAYS;
    return (last.value.si - estimate(last.day, bed, warmerK)) * left;
  };
  const everywhere = measured.some((observation) => observation.bed === null);
  const beds = new Set(measured.map((observation) => observation.bed));
  return { appliesTo: (bed) => everywhere || (bed !== null && beds.has(bed.key)), correctionK };
}
