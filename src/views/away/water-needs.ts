import { type DaySpan, plus } from "../../base/index.ts";
import type { BedWater, WateringWeek } from "../../engine/index.ts";
import type { AwayWaterNeed } from "./away-need.ts";

/** Days from a week's Monday to its Sunday. */
const TO_SUNDAY = 6;

/**
 * What each bed needs in its driest week of those in the span, in the order they first need water; none in wet weeks.
 */
export function awayWaterNeedsIn(
  weeks: readonly WateringWeek[],
  span: DaySpan,
): readonly AwayWaterNeed[] {
  const byBed = new Map<string | null, BedWater>();
  for (const { monday, beds } of weeks) {
    if (monday > span.to || plus(monday, TO_SUNDAY) < span.from) continue;
    for (const each of beds) {
      const known = byBed.get(each.bed);
      if (!known || (known.litres ?? 0) < (each.litres ?? 0)) byBed.set(each.bed, each);
    }
  }
  return [...byBed.values()].map(({ bed, litres, runs }) => ({
    kind: "water",
    bed,
    litresAWeek: litres,
    runs,
  }));
}
