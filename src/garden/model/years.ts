import { plantingsNamed } from "./named.ts";
import type { Plan, Planting } from "./plan.ts";

/**
 * The planting that another follows: in its own year's plan or, where that has none, in the newest earlier plan with
 * any of that name, if it has just one. Null where it follows none, or none is found.
 */
export function predecessorOf(planting: Planting, plans: readonly Plan[]): Planting | null {
  const { after } = planting;
  if (after === null) return null;
  const all = plans.flatMap(({ plantings }) => plantings);
  const known = all.find(({ key }) => key === after);
  if (known) return known;
  const own = plans.find(({ plantings }) => plantings.some(({ key }) => key === planting.key));
  const before = plans.filter(({ year }) => year < (own?.year ?? Number.POSITIVE_INFINITY));
  return newestCalled(after, before);
}

/**
 * The one planting that a name (a slug) fits in the newest plan that has any of that name; null where none or several
 * fit there.
 */
export function newestCalled(name: string, plans: readonly Plan[]): Planting | null {
  const newestFirst = [...plans].sort((a, b) => b.year - a.year);
  const fitting = newestFirst
    .map(({ plantings }) => plantingsNamed(name.replaceAll("-", " "), plantings))
    .find((found) => found.length > 0);
  return fitting?.length === 1 ? (fitting[0] ?? null) : null;
}

/** The same plans, with the name of a predecessor of an earlier year replaced by that planting's key. */
export function withLinkedPlantings(plans: readonly Plan[]): readonly Plan[] {
  const named = (planting: Planting) =>
    planting.after === null
      ? planting
      : { ...planting, after: predecessorOf(planting, plans)?.key ?? planting.after };
  return plans.map((plan) => ({ ...plan, plantings: plan.plantings.map(named) }));
}
