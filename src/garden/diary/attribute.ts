import type { DiaryLine, Plan } from "../model/plan.ts";
import { asTold } from "./asides.ts";
import type { LineBy } from "./clause.ts";
import { withoutVarieties } from "./varieties.ts";
import { plainWording } from "./wording.ts";

/** A line and who did what it says, with the rest of its text in plain small letters. */
export type AttributedLine = LineBy & { readonly text: string };

/** When it was, said before who did it. */
const FIRST_WHEN = /^((?:yesterday|today|tonight|this morning|this afternoon|last night),? )(.+)$/;

/** The line without who did it: `Oda: …`, `… by Oda`, `Oda thinned …`, `I …`. */
export function attributeLine(line: DiaryLine, plans: readonly Plan[]): AttributedLine {
  const text = withoutVarieties(line.text.trim(), plans)
    .toLowerCase()
    .replace(/[.!]+$/, "")
    .replace(/\s+/g, " ");
  const [, first = "", told = text] = FIRST_WHEN.exec(text) ?? [];
  const people = plans.flatMap((plan) => plan.people);
  for (const { key, name } of people) {
    const small = name.toLowerCase();
    const before = leadsOf(small).find((lead) => told.startsWith(lead));
    if (before)
      return { line, text: plainWording(`${first}${told.slice(before.length)}`), by: key };
    const behind = [` by ${small}`, ` (${small})`, `, ${small}`].find((end) => text.endsWith(end));
    if (behind) return { line, text: plainWording(text.slice(0, -behind.length)), by: key };
  }
  const said = asTold(text).replace(/^(?:i|we|i have|we have|i've|we've) (?=\S)/, "");
  return { line, text: plainWording(said), by: null };
}

/** How a line begins that is told by somebody of that name, or of them: `oda: `, `oda says she has `. */
function leadsOf(name: string): readonly string[] {
  const told = ["says", "said", "reckons"].flatMap((tells) =>
    ["she has", "he has", "they have", "she's", "he's", "she", "he"].map(
      (who) => `${name} ${tells} ${who} `,
    ),
  );
  return [
    ...told,
    `${name} says `,
    `${name} reckons `,
    `${name}: `,
    `${name} and me `,
    `${name} and i `,
    `${name} - `,
    `${name}, `,
    `${name} has `,
    `${name} `,
  ];
}
