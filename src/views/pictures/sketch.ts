import type { Day } from "../../base/index.ts";
import type { YearCourse } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";

/** The form of a picture: for a phone held upright, or for a sheet of A4 on its side. */
export type PictureForm = "phone" | "page";

/** What can be drawn: the chance of frost, the soil's warmth, what grows when in each bed, or this year's weather. */
export type PictureSubject = "frost" | "soil" | "season" | "weather";

/** The season that is drawn: the plan is one of the year's. */
export type DrawnSeason = { readonly year: YearCourse; readonly plan: Plan };

/**
 * The input of a picture. The whole year is there, because plantings of last autumn are in this season's beds. `today`
 * null draws no line for it.
 */
export type Sketch = DrawnSeason & { readonly today: Day | null; readonly form: PictureForm };
