import type { Day } from "../base/index.ts";
import { freeInBeds, frostTonight, type YearCourse } from "../engine/index.ts";
import { newestPlan, planOn } from "../garden/model/index.ts";
import { frostNotes, roomNotes } from "../views/index.ts";
import { type BedsDrawing, drawBeds } from "../views/records.ts";
import { type BedsForm, formOf } from "./bed-drawings.ts";

export { type BedsDrawing, bedsPlanned, bedsStanding } from "./bed-drawings.ts";

/** The beds from above on a day, and what is free in each, and from when; null for a garden without beds. */
export function bedsWithRoom(year: YearCourse, day: Day, form: BedsForm): BedsDrawing | null {
  const { measures } = newestPlan(year.plans);
  const notes = roomNotes(freeInBeds(year, day), measures);
  return drawBeds({ year, plan: planOn(year.plans, day), day, ...formOf(form), notes });
}

/** The beds in which something stands in the night after a day, and what each needs at a forecast's low [°C]; null where there is no such bed. */
export function bedsInFrost(year: YearCourse, day: Day, forecastC: number): BedsDrawing | null {
  const notes = frostNotes(frostTonight(year, day, forecastC));
  return drawBeds({ year, plan: planOn(year.plans, day), day, ...formOf("inset"), notes });
}
