import type { Plan } from "../../garden/model/plan.ts";

/** Somebody of the household as a sheet names them: key, name, and the letters that stand for it. */
export type SheetPerson = { readonly key: string; readonly name: string; readonly letters: string };

/**
 * Everybody of some years' plans, each once, with as few first letters as tell them apart; where no letters do, the whole
 * name. Empty where nobody is named.
 */
export function sheetPeople(plans: readonly Plan[]): readonly SheetPerson[] {
  const names = new Map(plans.flatMap(({ people }) => people.map(({ key, name }) => [key, name])));
  return [...names].map(([key, name]) => {
    const others = [...names].filter(([other]) => other !== key).map(([, its]) => its);
    return { key, name, letters: lettersOf(name, others) };
  });
}

/** Letters that may stand for a name, at the most. Source: house rule; longer ones are no shorter than a name. */
const MOST_LETTERS = 3;

function lettersOf(name: string, others: readonly string[]): string {
  const letters = [...name];
  for (let count = 1; count <= MOST_LETTERS; count++) {
    const first = letters.slice(0, count).join("");
    if (!others.some((other) => other.startsWith(first))) return first;
  }
  return name;
}
