import type { Day } from "../../base/days/day.ts";
import type { Fact } from "../../garden/diary/fact.ts";
import type { Bed } from "../../garden/model/plan.ts";

/** Days for which a soil temperature that was measured corrects the estimate, fading to nothing. Source: house rule. */
export const MEASURED_LASTS_DAYS = 14;

/** Soil [°C] of a day in a bed, or in open ground where that is null, in a season so much warmer than usual [K]. */
export type SoilOf = (day: Day, bed: Bed | null, warmerK?: number) => number;

/** What the diary measured of the soil: whether anything in a bed, and how much warmer [K] than the estimate that makes it. */
export type MeasuredSoil = {
  readonly isIn: (bed: Bed | null) => boolean;
  readonly moreK: SoilOf;
};

/**
 * How much warmer than the estimate the soil is, by what was measured last in that bed or in none. Full on its day,
 * whatever the season, fading over MEASURED_LASTS_DAYS.
 */
export function measuredSoil(facts: readonly Fact[], estimate: SoilOf): MeasuredSoil {
  const measured = facts
    .flatMap((fact) => (fact.kind === "measured" && fact.what === "soil" ? [fact] : []))
    .sort((a, b) => a.day - b.day);
  const counts = (fact: (typeof measured)[number], bed: Bed | null) =>
    fact.bed === null || fact.bed === bed?.key;
  const moreK: SoilOf = (day, bed, warmerK = 0) => {
    const last = measured.findLast(
      (fact) => day >= fact.day && day < fact.day + MEASURED_LASTS_DAYS && counts(fact, bed),
    );
    if (!last) return 0;
    const left = 1 - (day - last.day) / MEASURED_LASTS_DAYS;
    return (last.value.si - estimate(last.day, bed, warmerK)) * left;
  };
  const everywhere = measured.some((fact) => fact.bed === null);
  const beds = new Set(measured.map((fact) => fact.bed));
  return { isIn: (bed) => everywhere || (bed !== null && beds.has(bed.key)), moreK };
}
