import type { Day } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";

/** The subject of a plain remark in the diary, by its words. */
export type RemarkKind = "failed" | "left" | "moved" | "frost" | "plain";

/** A line of the diary that is neither an act nor a stage, as it was written. */
export type SheetRemark = { readonly day: Day; readonly text: string; readonly kind: RemarkKind };

/** The words of each kind; the first that fits wins. Source: house rule; how gardeners write of it. */
const WORDS: readonly (readonly [Exclude<RemarkKind, "plain">, RegExp])[] = [
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

/** A word that negates those after it: what did not fail is no failure. */
const NO_LOSS =
  /\b(?:no|not|none|nothing|without|didn't|hardly any) (?:\w+ ){0,3}(?:failed|died|dead|eaten|bolted|rotted|lost|split|frost|slugs?|blight|mildew|ice|snow|hail)\b/;

/** The diary's remarks from one day to another, both inclusive, in day order, each with its subject. */
export function remarksOf(
  observations: readonly Observation[],
  from: Day,
  to: Day,
): readonly SheetRemark[] {
  return observations
    .flatMap((observation) =>
      "text" in observation && observation.kind !== "undone" ? [observation] : [],
    )
    .filter(({ day }) => day >= from && day <= to)
    .sort((a, b) => a.day - b.day)
    .map((observation) => {
      const { kind, day, text } = observation;
      if (kind === "note") return { day, text, kind: kindOf(text.toLowerCase()) };
      if (kind === "bought") return { day, text, kind: "plain" };
      return { day, text, kind: kind === "lost" ? "failed" : kind };
    });
}

function kindOf(text: string): RemarkKind {
  if (NO_LOSS.test(text)) return "plain";
  return WORDS.find(([, words]) => words.test(text))?.[0] ?? "plain";
}
