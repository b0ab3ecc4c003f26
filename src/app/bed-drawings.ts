import type { Day } from "../base/index.ts";
import { type Plan, planOn, seasonOf } from "../garden/model/index.ts";
import {
  type BedsDrawing,
  drawBeds,
  fullestDay,
  type JobInBed,
  jobNotes,
  type PictureForm,
  type StandingYears,
} from "../views/records.ts";

export { type BedsDrawing, type JobInBed, PICTURE_STYLE } from "../views/records.ts";

/** Beds drawn as a file of that form, into a page (`inset`), or as an image that stands in a page (`image`). */
export type BedsForm = PictureForm | "inset" | "image";

/** How a drawing of that form is asked for. */
export function formOf(form: BedsForm): {
  readonly form: PictureForm;
  readonly inset: boolean;
  readonly styled: boolean;
} {
  if (form === "inset") return { form: "phone", inset: true, styled: false };
  return form === "image"
    ? { form: "phone", inset: true, styled: true }
    : { form, inset: false, styled: true };
}

/** The beds from above as they stand on a day; null for a garden without beds. */
export function bedsStanding(year: StandingYears, day: Day, form: BedsForm): BedsDrawing | null {
  const plan = planOn(year.plans, day);
  return drawBeds({ year, plan, day, ...formOf(form), notes: null });
}

/** The beds that have a job, with what is to be done in each; null where no job is in a bed. */
export function bedsWithJobs(
  year: StandingYears,
  day: Day,
  jobs: readonly JobInBed[],
): BedsDrawing | null {
  const notes = jobNotes(jobs, { year, day });
  const plan = planOn(year.plans, day);
  return drawBeds({ year, plan, day, ...formOf("image"), notes });
}

/** The beds of a plan: as they stand today, or, out of its season or with nothing in them, on the day on which most does. */
export function bedsPlanned(
  year: StandingYears,
  { plan, today, form }: { readonly plan: Plan; readonly today: Day; readonly form: BedsForm },
): BedsDrawing | null {
  const { from, to } = seasonOf(plan);
  const now = from <= today && today <= to;
  const day = now && hasStanding(year, today) ? today : fullestDay({ year, plan });
  return drawBeds({ year, plan, day, ...formOf(form), notes: null });
}

function hasStanding({ seasons }: StandingYears, day: Day): boolean {
  return seasons.some(({ plantings }) =>
    plantings.some(({ sowings }) =>
      sowings.some(({ placed, gone }) => placed !== null && placed <= day && day < gone),
    ),
  );
}
