import type { Day } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import type { Bed } from "../../garden/model/index.ts";

/** Days for which a measured soil temperature corrects the estimate, fading to nothing. Source: house rule. */
export const MEASURED_LASTS_DAYS = 14;

/**
 * Soil [°C] of a day in a bed, or in open ground where that is null, in a season that many kelvins warmer than usual
 * [K].
 */
export type SoilTemperatureFn = (day: Day, bed: Bed | null, warmerK?: number) => number;

/**
 * What the diary measured of the soil: whether a bed has measurements, and how much warmer [K] than the estimate they
 * make it.
 */
export type MeasuredSoil = {
  readonly appliesTo: (bed: Bed | null) => boolean;
  readonly correctionK: SoilTemperatureFn;
};

/** A soil temperature [°C] that the diary has of a day, in a bed by its key or in open ground where that is null. */
export type SoilMeasurement = {
  readonly day: Day;
  readonly bed: string | null;
  readonly soilC: number;
};

/** The soil temperatures in a diary, in day order. */
export function soilMeasurementsIn(
  observations: readonly Observation[],
): readonly SoilMeasurement[] {
  return observations
    .flatMap((observation) =>
      observation.kind === "measured" && observation.what === "soil"
        ? [{ day: observation.day, bed: observation.bed, soilC: observation.value.si }]
        : [],
    )
    .sort((a, b) => a.day - b.day);
}

/**
 * How much warmer than the estimate the soil is, by the last measurement in that bed or in no bed. Full on its day,
 * whatever the season, fading over MEASURED_LASTS_DAYS. Measurements in day order.
 */
export function measuredSoil(
  measurements: readonly SoilMeasurement[],
  estimate: SoilTemperatureFn,
): MeasuredSoil {
  const correctionK: SoilTemperatureFn = (day, bed, warmerK = 0) => {
    const last = measurements.findLast(
      (each) =>
        day >= each.day &&
        day < each.day + MEASURED_LASTS_DAYS &&
        (each.bed === null || each.bed === bed?.key),
    );
    if (!last) return 0;
    const left = 1 - (day - last.day) / MEASURED_LASTS_DAYS;
    return (last.soilC - estimate(last.day, bed, warmerK)) * left;
  };
  const everywhere = measurements.some(({ bed }) => bed === null);
  const beds = new Set(measurements.map(({ bed }) => bed));
  return { appliesTo: (bed) => everywhere || (bed !== null && beds.has(bed.key)), correctionK };
}
