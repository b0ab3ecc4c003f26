import type { Day } from "../../base/days/day.ts";
import type { Fact } from "../../garden/diary/fact.ts";

/** What a diary's plain remark tells of, by its own words. */
export type Kind = "failed" | "left" | "moved" | "frost" | "plain";

/** A line of the diary that is no deed and no stage, as it was written. */
export type Remark = { readonly day: Day; readonly text: string; readonly kind: Kind };

/** Words that tell of each kind, the first that fits wins. Source: house rule; how gardeners write of it. */
const WORDS: readonly (readonly [Exclude<Kind, "plain">, RegExp])[] = [
  ["moved", /\b(?:moved|shifted|transferred|dug in elsewhere)\b/],
  [
    "left",
    /\b(?:left (?:it|them|undone|this year|for (?:next|another) year)|gave up|given up|skipped)\b/,
  ],
  [
    "failed",
    /\b(?:failed|died|dead|eaten|ate|bolted|rotted|rotten|blight|drowned|killed|lost|split|nothing came|slugs?|flea beetles?|mildew|frosted)\b/,
  ],
  ["frost", /\b(?:frost|froze|frozen|ice|snow|hail)\b/],
];

/** A word that turns the ones behind it round: what did not fail is no failure. */
const NO_LOSS =
  /\b(?:no|not|none|nothing|without|didn't|hardly any) (?:\w+ ){0,3}(?:failed|died|dead|eaten|bolted|rotted|lost|split|frost|slugs?|blight|mildew|ice|snow|hail)\b/;

/** The diary's remarks from one day to another, both inclusive, in day order, each with what it tells of. */
export function remarksOf(facts: readonly Fact[], from: Day, to: Day): readonly Remark[] {
  return facts
    .flatMap((fact) => ("text" in fact && fact.kind !== "undone" ? [fact] : []))
    .filter(({ day }) => day >= from && day <= to)
    .sort((a, b) => a.day - b.day)
    .map((fact) => {
      const { kind, day, text } = fact;
      if (kind === "note") return { day, text, kind: kindOf(text.toLowerCase()) };
      return { day, text, kind: kind === "lost" ? "failed" : kind };
    });
}

function kindOf(text: string): Kind {
  if (NO_LOSS.test(text)) return "plain";
  return WORDS.find(([, words]) => words.test(text))?.[0] ?? "plain";
}
