import type { Family } from "../../crops/index.ts";
import type { FamilyInk } from "./palette.ts";

/** Families with a colour of their own. Source: house rule: those of most kitchen gardens; the rest share one. */
const INKS: Partial<Readonly<Record<Family, FamilyInk>>> = {
  "cabbage family": "cabbage",
  "onion family": "onion",
  "carrot family": "carrot",
  "beet family": "beet",
  "daisy family": "daisy",
  "nightshade family": "nightshade",
  "gourd family": "gourd",
  "pea family": "pea",
};

/** The colour of a family's plants. */
export function familyInk(family: Family): FamilyInk {
  return INKS[family] ?? "other";
}

/** The families of some crops with a colour of their own, each once in the order of the crops; last the rest, as `others`. */
export function familyColours(
  families: readonly Family[],
): readonly { readonly ink: FamilyInk; readonly name: string }[] {
  const own = [...new Set(families)].filter((family) => familyInk(family) !== "other");
  const named = own.map((family) => ({ ink: familyInk(family), name: family }));
  const rest = families.some((family) => familyInk(family) === "other");
  return rest ? [...named, { ink: "other", name: "others" }] : named;
}
