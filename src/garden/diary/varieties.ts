import type { Plan } from "../model/plan.ts";
import { namePlaces } from "./names.ts";

/** Words behind a crop that are written large as a variety is: `Solent Wight and Germidour`, `Nantes 2`. */
const VARIETY =
  /^,? (?:(?:var\.?|variety|cv|of|called) )?(?:\p{Lu}[\p{Ll}\d'’-]+)(?: (?:(?:and|of|de|du|x) )?(?:\p{Lu}[\p{Ll}\d'’-]+|\d{1,2}(?=[ ,.]|$)))*/u;
/** Large words that are no variety: days, months, and what is written large for its own sake. */
const OTHER =
  /\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun|Jan|Feb|Mar|Apr|May|June?|July?|Aug|Sep|Oct|Nov|Dec|Bed|Bags|Greenhouse|Easter|Christmas|Good|Day|I|In|Up|Out|On|Off|Are|Is|Not|No)[a-z]*\b/;

/**
 * A line as it was written, without the varieties that stand behind a crop and that no plan has: whoever writes them means
 * that crop. Lines that write every word large keep theirs.
 */
export function withoutVarieties(text: string, plans: readonly Plan[]): string {
  let plain = text;
  for (const { to } of [...namePlaces(text.toLowerCase(), plans)].reverse()) {
    const rest = plain.slice(to);
    const variety = VARIETY.exec(rest)?.[0];
    const after = variety === undefined ? "" : rest.slice(variety.length);
    const own = plain.slice(0, to) + after;
    if (variety === undefined || OTHER.test(variety) || isName(variety, plans)) continue;
    if (/(?:^| )\p{Ll}/u.test(own)) plain = own;
  }
  return plain;
}

/** Whether a plan has a bed or somebody of that name. */
function isName(words: string, plans: readonly Plan[]): boolean {
  const small = words.toLowerCase();
  return plans.some(({ beds, people }) =>
    [...beds, ...people].some(({ name }) => small.includes(name.toLowerCase().split(" ")[0] ?? "")),
  );
}
