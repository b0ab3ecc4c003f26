import type { Day } from "../base/days/day.ts";
import { planOn } from "../engine/schedule/horizon.ts";
import type { Year } from "../engine/year.ts";
import type { Plan } from "../garden/model/plan.ts";
import { drawPicture } from "../views/pictures/picture.ts";
import type { PictureForm, PictureSubject } from "../views/pictures/sketch.ts";

export type { PictureForm, PictureSubject } from "../views/pictures/sketch.ts";

/** Which season is drawn, null for that of today, and in which form. */
export type PictureRequest = {
  readonly plan: Plan | null;
  readonly today: Day;
  readonly form: PictureForm;
};

/** One picture of a season as the text of an SVG file. */
export function picture(
  year: Year,
  subject: PictureSubject,
  { plan, today, form }: PictureRequest,
): string {
  return drawPicture(subject, { year, plan: plan ?? planOn(year.plans, today), today, form });
}
