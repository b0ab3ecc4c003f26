import type { Day } from "../../base/days/day.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import type { Observation } from "../../garden/diary/observation.ts";
import type { Plan } from "../../garden/model/plan.ts";

/** What a picture is looked at on: a phone held upright, or a sheet of A4 on its side. */
export type PictureForm = "phone" | "page";

/** What can be drawn: the chance of frost, the soil's warmth, or what grows when in each bed. */
export type PictureSubject = "frost" | "soil" | "season";

/**
 * All that a picture is drawn from. `plan` is the year that is drawn and one of `plans`, all of the garden's years, since
 * what went in last autumn stands in this year's beds. `today` null draws no line for it.
 */
export type Sketch = {
  readonly plan: Plan;
  readonly plans: readonly Plan[];
  readonly scheduled: readonly ScheduledTask[];
  readonly observations: readonly Observation[];
  readonly today: Day | null;
  readonly form: PictureForm;
};
