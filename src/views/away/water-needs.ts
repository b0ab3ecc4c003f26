import { type DaySpan, plus } from "../../base/days/day.ts";
import { areaM2Of, dripMinutes, litresOn, runsOf } from "../../engine/growth/watering.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { dryWeeksOf, type WaterNeed as WeeklyNeed } from "../../engine/practices/weekly-need.ts";
import type { AwayWaterNeed } from "./away-need.ts";

/** Days from a week's Monday to its Sunday. */
const TO_SUNDAY = 6;

/** What each bed wants in the weeks that the span touches, its driest week's, in the order they first want any; none in wet weeks. The feed's own weekly need. */
export function awayWaterNeedsIn(garden: WholeGarden, span: DaySpan): readonly AwayWaterNeed[] {
  const byBed = new Map<string | null, AwayWaterNeed>();
  for (const { monday, needs } of dryWeeksOf(garden)) {
    if (monday > span.to || plus(monday, TO_SUNDAY) < span.from) continue;
    for (const need of needs.map(awayWaterNeedOf)) {
      const known = byBed.get(need.bed);
      if (!known || (known.litresAWeek ?? 0) < (need.litresAWeek ?? 0)) byBed.set(need.bed, need);
    }
  }
  return [...byBed.values()];
}

function awayWaterNeedOf({ bed, mm }: WeeklyNeed): AwayWaterNeed {
  const unknown = { kind: "water", bed: bed?.key ?? null, litresAWeek: null, runs: null } as const;
  const areaM2 = bed && areaM2Of(bed);
  if (!bed || areaM2 === null || mm === null) return unknown;
  const flowLh = bed.drip?.si;
  const runs = flowLh ? runsOf(dripMinutes({ needMm: mm, areaM2, flowLh })) : null;
  return { ...unknown, litresAWeek: litresOn(areaM2, mm), runs };
}
