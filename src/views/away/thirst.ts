import { plus } from "../../base/days/day.ts";
import { areaM2Of, dripMinutes, litresOn, runsOf } from "../../engine/growth/watering.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { dryWeeksOf, type Need as WeeklyNeed } from "../../engine/practices/weekly-need.ts";
import type { Span } from "./leave.ts";
import type { Thirst } from "./need.ts";

/** Days from a week's Monday to its Sunday. */
const TO_SUNDAY = 6;

/** What each bed wants in the weeks that the span touches, its driest week's, in the order they first want any; none in wet weeks. The feed's own weekly need. */
export function thirstIn(garden: WholeGarden, span: Span): readonly Thirst[] {
  const byBed = new Map<string | null, Thirst>();
  for (const { monday, needs } of dryWeeksOf(garden)) {
    if (monday > span.to || plus(monday, TO_SUNDAY) < span.from) continue;
    for (const thirst of needs.map(thirstOf)) {
      const known = byBed.get(thirst.bed);
      if (!known || (known.litresAWeek ?? 0) < (thirst.litresAWeek ?? 0))
        byBed.set(thirst.bed, thirst);
    }
  }
  return [...byBed.values()];
}

function thirstOf({ bed, mm }: WeeklyNeed): Thirst {
  const unknown = { kind: "water", bed: bed?.key ?? null, litresAWeek: null, runs: null } as const;
  const areaM2 = bed && areaM2Of(bed);
  if (!bed || areaM2 === null || mm === null) return unknown;
  const flowLh = bed.drip?.si;
  const runs = flowLh ? runsOf(dripMinutes({ needMm: mm, areaM2, flowLh })) : null;
  return { ...unknown, litresAWeek: litresOn(areaM2, mm), runs };
}
