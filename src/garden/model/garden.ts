import type { Plan } from "./plan.ts";

/** The newest plan with the beds and people of all years, for texts that name them. Plans in year order, not empty. */
export function wholeGarden(plans: readonly Plan[]): Plan {
  const newest = newestPlan(plans);
  const byKey = <T extends { readonly key: string }>(all: readonly T[]) => [
    ...new Map(all.map((each) => [each.key, each])).values(),
  ];
  return {
    ...newest,
    beds: byKey(plans.flatMap((plan) => plan.beds)),
    people: byKey(plans.flatMap((plan) => plan.people)),
  };
}

/** The newest of a garden's plans. Plans in year order; throws where there is none. */
export function newestPlan(plans: readonly Plan[]): Plan {
  const newest = plans.at(-1);
  if (!newest) throw new RangeError("a garden has a plan");
  return newest;
}
