import type { Day } from "../base/index.ts";
import { freeInBeds, frostTonight, type YearCourse } from "../engine/index.ts";
import { newestPlan, planOn } from "../garden/model/index.ts";
import {
  type BedsDrawing,
  drawBeds,
  frostNotes,
  type PictureForm,
  roomNotes,
} from "../views/index.ts";

export type { BedsDrawing } from "../views/index.ts";

/** What a drawing of the beds is for: what stands; what is free; or a night, by its low in the forecast [°C]. */
export type BedsSubject =
  | { readonly kind: "standing" }
  | { readonly kind: "room" }
  | { readonly kind: "frost"; readonly forecastC: number };

/** The beds from above on a day, with what is said of them; null for a garden without beds. */
export function bedsFromAbove(
  year: YearCourse,
  day: Day,
  { subject, form }: { readonly subject: BedsSubject; readonly form: PictureForm },
): BedsDrawing | null {
  const sketch = { year, plan: planOn(year.plans, day), day, form };
  switch (subject.kind) {
    case "standing":
      return drawBeds({ ...sketch, notes: null });
    case "room": {
      const { measures } = newestPlan(year.plans);
      return drawBeds({ ...sketch, notes: roomNotes(freeInBeds(year, day), measures) });
    }
    case "frost":
      return drawBeds({ ...sketch, notes: frostNotes(frostTonight(year, day, subject.forecastC)) });
  }
}
