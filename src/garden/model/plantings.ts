import type { Bed, Plan, Planting } from "./plan.ts";

/** Whether a planting goes into its bed as plants, raised or bought, so that to plant it is to set it out. */
export function isRaised(start: Planting["start"]): boolean {
  return start === "plants" || start === "seed indoors" || start === "winter-sown";
}

/** The bed that a planting stands in, with the planting's own covers over it; null where it has none, or the plan does not name it. */
export function bedOf({ beds }: Pick<Plan, "beds">, { bed: key, under }: Planting): Bed | null {
  const bed = beds.find((each) => each.key === key);
  if (!bed) return null;
  return under.length === bed.covers.length ? bed : { ...bed, covers: under };
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
