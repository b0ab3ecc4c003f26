import { capital } from "../base/text/words.ts";
import { CROPS } from "../crops/crops.ts";

export { type FirstAnswers, firstPlan } from "../garden/plan/first-plan.ts";

/** A crop by its key, its name as a heading says it, and what a plan calls it. */
export type CropNames = { readonly key: string; readonly name: string; readonly one: string };

/** Every crop there is, in the order of their names. */
export function cropNames(): readonly CropNames[] {
  return CROPS.map(({ key, one, many }) => ({ key, one, name: capital(many) })).sort((a, b) =>
    a.name < b.name ? -1 : 1,
  );
}
