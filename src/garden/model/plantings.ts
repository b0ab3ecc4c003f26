import type { Bed, Plan, Planting } from "./plan.ts";

/** Whether a planting goes into its bed as plants, raised or bought, so that to plant it is to set it out. */
export function isRaised(start: Planting["start"]): boolean {
  return start === "plants" || start === "seed indoors" || start === "winter-sown";
}

/** Beds under cloches of one planting alone, cached, since growth compares beds by identity. */
const underCloches = new WeakMap<Planting, Bed>();

/**
 * The bed that a planting stands in, under cloches where the planting has its own; null where it has none, or the plan
 * does not name it. The same planting gives the same object.
 */
export function bedOf({ beds }: Pick<Plan, "beds">, planting: Planting): Bed | null {
  const bed = beds.find(({ key }) => key === planting.bed);
  if (!bed || !planting.under.includes("cloche") || bed.covers.includes("cloche"))
    return bed ?? null;
  const own = underCloches.get(planting) ?? { ...bed, covers: [...bed.covers, "cloche"] };
  underCloches.set(planting, own);
  return own;
}

/** The slug of a planting's own name: its key without the year. */
export function ownName(planting: Planting): string {
  return planting.key.slice(planting.key.indexOf("/") + 1);
}

/**
 * Plantings by the number of others before them in their chain: first those that follow none of this plan's, then those
 * that follow the first, and so on.
 */
export function plantingRanks(plantings: readonly Planting[]): readonly (readonly Planting[])[] {
  const byKey = new Map(plantings.map((planting) => [planting.key, planting]));
  const behind = (planting: Planting): number => {
    const before = planting.after === null ? undefined : byKey.get(planting.after);
    return before ? 1 + behind(before) : 0;
  };
  const ranks: Planting[][] = [];
  for (const planting of plantings) {
    const rank = behind(planting);
    ranks[rank] = [...(ranks[rank] ?? []), planting];
  }
  return ranks.filter((rank) => rank !== undefined);
}
