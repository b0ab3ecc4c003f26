import type { Day } from "../base/index.ts";
import type { YearCourse } from "../engine/index.ts";
import { type Plan, planOn } from "../garden/model/index.ts";
import { drawPicture, type PictureForm, type PictureSubject } from "../views/index.ts";

export type { PictureForm, PictureSubject } from "../views/index.ts";

/** Which season is drawn, null for that of today, and in which form. */
export type PictureRequest = {
  readonly plan: Plan | null;
  readonly today: Day;
  readonly form: PictureForm;
};

/** One picture of a season as the text of an SVG file. */
export function picture(
  year: YearCourse,
  subject: PictureSubject,
  { plan, today, form }: PictureRequest,
): string {
  return drawPicture(subject, { year, plan: plan ?? planOn(year.plans, today), today, form });
}
