import type { Day } from "../../../base/index.ts";
import type { Season } from "../../../engine/index.ts";
import type { Plan } from "../../../garden/model/index.ts";
import type { PictureForm } from "../sketch.ts";

/** How a planting is marked in its bed: as what is to be covered, or as what is to be done something to. */
export type Mark = { readonly planting: string; readonly as: "cover" | "do" };

/**
 * What is said under a bed, a line each, and what is marked in it; `bed` null: plants in no bed. `freeCm` of its width is to
 * be seen as free, null where that is not the matter.
 */
export type BedNote = {
  readonly bed: string | null;
  readonly lines: readonly string[];
  readonly marks: readonly Mark[];
  readonly freeCm: number | null;
};

/** What the drawing is for, in a sentence under its title, with its notes; `alone` draws only beds that have one. */
export type BedNotes = {
  readonly text: string;
  readonly beds: readonly BedNote[];
  readonly alone: boolean;
};

/** What stood where and when, as it is stored: every year's plan, and what became of its plantings. */
export type StandingYears = {
  readonly plans: readonly Plan[];
  readonly seasons: readonly Pick<Season, "year" | "plantings">[];
};

/** The input of a drawing of the beds: of the beds of this plan, one of the year's, as they are on a day. */
export type BedsSketch = {
  readonly year: StandingYears;
  readonly plan: Plan;
  readonly day: Day;
  readonly form: PictureForm;
  /** Drawn into a page, which has a title, a ground and the style already. */
  readonly inset: boolean;
  /** Whether it brings the style along all the same, as an image in a page has to. */
  readonly styled?: boolean;
  readonly notes: BedNotes | null;
};
