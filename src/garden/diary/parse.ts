import type { DiaryLine, Plan } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { observationOfAnswer } from "./answers.ts";
import { type DiaryContext, inEach, type LineBy, note, observed } from "./clause.ts";
import { deedsIn } from "./deeds.ts";
import {
  deniedIn,
  endedIn,
  movedIn,
  type Postponement,
  postponementIn,
  undoneIn,
} from "./denials.ts";
import { measurementIn } from "./measurements.ts";
import type { Observation } from "./observation.ts";
import { isActObservation, resolveConflicts } from "./resolve-conflicts.ts";
import { STAGE_PHRASES } from "./stages.ts";
import { bedNamed, subjectOf } from "./subjects.ts";

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

/** A line and who did what it says, with the rest of its text in lower case. */
type AttributedLine = LineBy & { readonly text: string };

/** Longer lines [letters] are prose, not told deeds. Source: house rule. */
const MAX_LINE_LETTERS = 300;

function parseDiaryLine(line: DiaryLine, context: DiaryContext): readonly Observation[] {
  if (line.answers) return [observationOfAnswer(line, context.vocabulary)];
  if (line.text.length > MAX_LINE_LETTERS) return [note(line, null)];
  const attributed = attributeLine(line, context.plans);
  const whole = observationsInClause(attributed, attributed.text, context);
  if (whole && observed(whole)) return whole;
  const clauses = attributed.text.split(/[,;.] +(?:and +)?| and /);
  const each = clauses.map((clause) => observationsInClause(attributed, clause.trim(), context));
  const all = each.flatMap((observations) => observations ?? []);
  const plain = clauses.length > 1 && each.every((observations) => observations !== null);
  if (plain && observed(all)) return all;
  return whole ?? [note(line, null)];
}

/** The line without who did it: `Oda: …`, `… by Oda`, `Oda thinned …`, `I …`. */
function attributeLine(line: DiaryLine, plans: readonly Plan[]): AttributedLine {
  const text = line.text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, "")
    .replace(/\s+/g, " ");
  const people = plans.flatMap((plan) => plan.people);
  for (const { key, name } of people) {
    const small = name.toLowerCase();
    const before = [`${small}: `, `${small} has `, `${small} `].find((lead) =>
      text.startsWith(lead),
    );
    if (before) return { line, text: text.slice(before.length).trim(), by: key };
    const behind = [` by ${small}`, ` (${small})`, `, ${small}`].find((end) => text.endsWith(end));
    if (behind) return { line, text: text.slice(0, -behind.length).trim(), by: key };
  }
  return { line, text: text.replace(/^(?:i|we|i have|we have|i've|we've) (?=\S)/, ""), by: null };
}

const NOT_SO =
  /\b(?:not|no|never|nothing|none|yet|cannot|\w+n't|will|shall|should|must|tomorrow|if|need|needs|plan|want|nearly|almost|half)\b/;

/** The facts of one clause; null where it has none. A note in it says why it nearly had one. */
function observationsInClause(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const measured = measurementIn(attributed.line, text, context.plans);
  if (measured) return [measured];
  return (
    parseUndo(attributed, text, context) ??
    parseDenial(attributed, text, context) ??
    parseEnding(attributed, text, context) ??
    actObservationsIn(attributed, text, context)
  );
}

/** What is taken back, `undo: carrots up`. */
function parseUndo(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const what = undoneIn(text);
  if (what === null) return null;
  const observations = observationsInClause(attributed, what, context) ?? [];
  const undo = observations.flatMap((observation): readonly Observation[] =>
    isActObservation(observation)
      ? [
          {
            kind: "undone",
            day: attributed.line.day,
            what: observation,
            text: attributed.line.text,
          },
        ]
      : [],
  );
  return undo.length > 0 ? undo : [note(attributed.line, `there is nothing to undo in ${what}`)];
}

/** What is not up, not ripe or not done yet, and jobs put off or left out; null where the line denies nothing that it names. */
function parseDenial(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const postponement = postponementIn(text, context.vocabulary);
  if (postponement) return [observePostponement(attributed, postponement, context)];
  const meaning = deniedIn(text);
  const observations =
    meaning === null || NOT_SO.test(meaning)
      ? null
      : actObservationsIn(attributed, meaning, context);
  const not = observations?.flatMap((observation) => asNotYet(observation)) ?? [];
  return not.length > 0 ? not : null;
}

function asNotYet(observation: Observation): readonly Observation[] {
  if (observation.kind === "seen") {
    const { day, planting, stage, sowing } = observation;
    return [{ kind: "not yet", day, planting, of: { stage }, sowing }];
  }
  if (observation.kind !== "done") return [];
  const { day, planting, practice, step } = observation;
  return [{ kind: "not yet", day, planting, of: { practice, step }, sowing: null }];
}

function observePostponement(
  attributed: AttributedLine,
  postponement: Postponement,
  { plans }: DiaryContext,
): Observation {
  const { day, text } = attributed.line;
  const subject = subjectOf(postponement.subject.replace(/^the /, ""), { day }, plans);
  if ("why" in subject) return note(attributed.line, subject.why);
  const { key: planting } = subject.planting;
  const { practice } = postponement;
  return postponement.leftOut
    ? { kind: "left", day, planting, practice, text }
    : { kind: "not yet", day, planting, of: { practice, step: null }, sowing: subject.sowing };
}

/** What failed, was lost, or was moved to another bed; null where the line tells of no such thing. */
function parseEnding(
  attributed: AttributedLine,
  text: string,
  { plans }: DiaryContext,
): readonly Observation[] | null {
  const { day, text: written } = attributed.line;
  const moved = movedIn(text);
  const ending = moved ?? endedIn(text);
  // What failed is told by what did not come; the rest is not so where the line says not.
  const failed = ending !== null && "kind" in ending && ending.kind === "failed";
  if (ending === null || (!failed && NOT_SO.test(text))) return null;
  const subject = subjectOf(ending.subject.replace(/^(?:the|all the) /, ""), { day }, plans);
  if ("why" in subject)
    return moved || subject.why.includes(" fits ") ? [note(attributed.line, subject.why)] : null;
  const { planting, sowing } = subject;
  if ("kind" in ending)
    return [{ kind: ending.kind, day, planting: planting.key, sowing, text: written }];
  const bed = bedNamed(ending.bed, plans);
  if (bed === null) return [note(attributed.line, `no bed is called ${ending.bed}`)];
  return [{ kind: "moved", day, planting: planting.key, bed: bed.key, text: written }];
}

/** What was done or seen; null where the clause says nothing of the kind. A note in it says why it nearly did. */
function actObservationsIn(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  if (NOT_SO.test(text)) return null;
  const seen = stagesIn(attributed, text, context);
  if (seen && observed(seen)) return seen;
  const done = deedsIn(attributed, text, context);
  return done && observed(done) ? done : (seen ?? done);
}

/** The stages that were seen, by the first phrase that fits; a note where it fits no planting. */
function stagesIn(
  { line }: AttributedLine,
  text: string,
  { plans }: DiaryContext,
): readonly Observation[] | null {
  let nearly: readonly Observation[] | null = null;
  for (const { pattern, stage } of STAGE_PHRASES) {
    const name = pattern.exec(text)?.groups?.subject;
    if (name === undefined) continue;
    const observations = inEach(name, (one) => {
      const subject = subjectOf(one, line, plans);
      if ("why" in subject) return note(line, subject.why);
      const { planting, sowing } = subject;
      return { kind: "seen", day: line.day, planting: planting.key, stage, sowing };
    });
    if (observed(observations)) return observations;
    nearly ??= observations;
  }
  return nearly;
}
