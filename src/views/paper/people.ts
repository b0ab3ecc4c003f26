import type { Plan } from "../../garden/model/index.ts";

/** A member of the household on a sheet: key, name, and initials. */
export type SheetPerson = { readonly key: string; readonly name: string; readonly letters: string };

/**
 * Everybody of some years' plans, each once, with as few first letters as distinguish them; where none do, the whole
 * name. Empty where nobody is named.
 */
export function sheetPeople(plans: readonly Plan[]): readonly SheetPerson[] {
  const names = new Map(plans.flatMap(({ people }) => people.map(({ key, name }) => [key, name])));
  return [...names].map(([key, name]) => {
    const others = [...names].filter(([other]) => other !== key).map(([, its]) => its);
    return { key, name, letters: lettersOf(name, others) };
  });
}

/** The most letters for a name. Source: house rule; more are no shorter than the name. */
const MOST_LETTERS = 3;

function lettersOf(name: string, others: readonly string[]): string {
  const letters = [...name];
  for (let count = 1; count <= MOST_LETTERS; count++) {
    const first = letters.slice(0, count).join("");
    if (!others.some((other) => other.startsWith(first))) return first;
  }
  return name;
}
