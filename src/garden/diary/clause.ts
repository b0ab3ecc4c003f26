import type { DiaryLine, Plan } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import type { Observation } from "./observation.ts";

/** What a line is read by: the plans of all the garden's years, and the words for its work. */
export type DiaryContext = { readonly plans: readonly Plan[]; readonly vocabulary: Vocabulary };

/** A line and the person (key) who did what it says, where it says who. */
export type LineBy = { readonly line: DiaryLine; readonly by: string | null };

/** A line that stays a note, and why it nearly was more. */
export function note({ day, text }: DiaryLine, why: string | null): Observation {
  return { kind: "note", day, text, why };
}

/** Whether all of it was understood. */
export function observed(observations: readonly Observation[]): boolean {
  return observations.every(({ kind }) => kind !== "note");
}

/** What is observed of a name; where the whole is none, of each of those it lists, and where one of them is none, that note alone. */
export function inEach(
  name: string,
  observe: (name: string) => Observation,
): readonly Observation[] {
  const whole = observe(name);
  if (whole.kind !== "note") return [whole];
  const several = name.split(/, *(?:and )?| and | & /);
  if (several.length < 2) return [whole];
  const each = several.map((one) => observe(one.trim()));
  const wrong = each.find(({ kind }) => kind === "note");
  return wrong ? [wrong] : each;
}
