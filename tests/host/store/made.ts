import type { Plan } from "../../../src/garden/model/plan.ts";
import type { Saving } from "../../../src/host/store/plans.ts";

/** The instant at which these plans are saved [ms since 1970 UTC]: 1 April 2027. */
export const SAVED_AT = Date.UTC(2027, 3, 1);

/** A garden's first plan of 2027, called by its id, ready to be saved; what is given stands instead. */
export function firstOf(garden: string, over: Partial<Saving> = {}): Saving {
  const year = over.year ?? 2027;
  return {
    garden,
    year,
    ...{ base: 0, first: false, text: "x", beside: {}, file: "" },
    plan: { name: garden, year, people: [], diary: [] } as unknown as Plan,
    ...{ readBy: "code 1", published: null, savedAt: SAVED_AT },
    origin: "https://garden.example",
    ...over,
  };
}
