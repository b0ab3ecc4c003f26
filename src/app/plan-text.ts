import { capital } from "../base/index.ts";
import { CROPS } from "../crops/index.ts";

export { type FirstAnswers, type FirstBed, firstPlan, nextYear } from "../garden/index.ts";

/** A crop by its key, its name as a heading says it, and what a plan calls one of it. */
export type CropName = { readonly key: string; readonly name: string; readonly one: string };

/** Every crop that a plan can name, by the name of many of it, in the order of the alphabet. */
export function cropNames(): readonly CropName[] {
  return CROPS.map(({ key, one, many }) => ({ key, one, name: capital(many) })).sort((a, b) =>
    a.name < b.name ? -1 : 1,
  );
}
