import type { DiaryLine, Plan } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { observationOfAnswer } from "./answers.ts";
import { attributeLine } from "./attribute.ts";
import { type DiaryContext, note, observed } from "./clause.ts";
import { observationsInClause } from "./clause-facts.ts";
import { namePlaces } from "./names.ts";
import type { Observation } from "./observation.ts";
import { resolveConflicts } from "./resolve-conflicts.ts";
import { observationsInClauses } from "./several-clauses.ts";
import { withFrontDay } from "./when.ts";
import { otherOrders } from "./wording.ts";

/**
 * What the lines of a garden's diary say, in their order; one line can say several things. `plans` are all its
 * years. What is not understood, or fits two plantings or none, is a note of that day with the reason where it
 * nearly fitted; nothing is dropped and nothing is an error.
 */
export function parseDiary(
  lines: readonly DiaryLine[],
  plans: readonly Plan[],
  vocabulary: Vocabulary,
): readonly Observation[] {
  return lines.flatMap((line) => parseDiaryLine(line, { plans, vocabulary }));
}

/** Each line of a garden's diaries, in the order of the plans, and what it says by itself. */
export function parseDiaryLines(
  plans: readonly Plan[],
  vocabulary: Vocabulary,
): readonly ParsedDiaryLine[] {
  return plans
    .flatMap(({ diary }) => diary)
    .map((line) => ({ line, observations: parseDiaryLine(line, { plans, vocabulary }) }));
}

/** A line of the diary and the facts in it. */
export type ParsedDiaryLine = {
  readonly line: DiaryLine;
  readonly observations: readonly Observation[];
};

/** What holds of the diaries of a garden's years: what a later line takes back or puts right is left out. In day order. */
export function observationsIn(
  plans: readonly Plan[],
  vocabulary: Vocabulary,
): readonly Observation[] {
  const lines = plans.flatMap((plan) => plan.diary);
  return resolveConflicts(parseDiary(lines, plans, vocabulary), plans, vocabulary).observations;
}

/** Longer lines [letters] are prose, not told deeds. Source: house rule. */
const MAX_LINE_LETTERS = 300;

function parseDiaryLine(line: DiaryLine, context: DiaryContext): readonly Observation[] {
  if (line.answers) return [observationOfAnswer(line, context.vocabulary)];
  if (line.text.length > MAX_LINE_LETTERS) return [note(line, null)];
  const said = attributeLine(line, context.plans);
  const front = withFrontDay(said.text, line.day);
  if ("why" in front) return [note(line, front.why)];
  const attributed = { ...said, line: { ...line, day: front.day }, text: front.text };
  const whole = observationsInClause(attributed, attributed.text, context);
  if (whole && observed(whole)) return whole;
  for (const text of otherOrders(attributed.text)) {
    const other = observationsInClause(attributed, text, context);
    if (other && observed(other)) return other;
  }
  const inOrder = [attributed.text, ...otherOrders(attributed.text)];
  const clauses = inOrder
    .map((text) => observationsInClauses({ ...attributed, text }, context))
    .find((read) => read !== null);
  const read = clauses ?? whole ?? [note(attributed.line, null)];
  return read.map((each) => withPlainReason(each, context));
}

/** Words [count] of the longest name that somebody may have given a planting or a bed. Source: house rule. */
const MOST_NAME_WORDS = 3;

/** Without a reason that takes half a sentence for a name. */
function withPlainReason(observation: Observation, { plans }: DiaryContext): Observation {
  if (observation.kind !== "note" || observation.why === null) return observation;
  const name = /^no (?:planting|bed) is called (.+)$/.exec(observation.why)?.[1];
  if (name === undefined) return observation;
  const isName = name.split(" ").length <= MOST_NAME_WORDS && namePlaces(name, plans).length === 0;
  return isName ? observation : { ...observation, why: null };
}
