import type { Plan } from "../../../src/garden/model/plan.ts";
import type { PlanToStore } from "../../../src/host/store/plans.ts";

/** The instant at which these plans are saved [ms since 1970 UTC]: 1 April 2027. */
export const SAVED_AT = Date.UTC(2027, 3, 1);

/** A plan with nothing in it but its name, its year and who is in it. */
export function bare(name: string, year = 2027, people: readonly string[] = []): Plan {
  const named = people.map((person) => ({ key: person.toLowerCase(), name: person }));
  const rest = { site: { clock: "UTC" }, measures: "metric", people: named, beds: [], diary: [] };
  return { name, year, ...rest } as unknown as Plan;
}

/** A garden's first plan of 2027, called by its id, ready to be saved; what is given stands instead. */
export function firstOf(garden: string, over: Partial<PlanToStore> = {}): PlanToStore {
  const year = over.year ?? 2027;
  return {
    garden,
    year,
    ...{ base: 0, first: false, text: "x", beside: {}, file: "" },
    plan: bare(garden, year),
    ...{ readBy: "code 1", published: null, savedAt: SAVED_AT },
    origin: "https://garden.example",
    ...over,
  };
}
