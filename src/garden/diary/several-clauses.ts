import type { AttributedLine } from "./attribute.ts";
import { type DiaryContext, observed } from "./clause.ts";
import { observationsInClause } from "./clause-facts.ts";
import type { Observation, ObservedStage } from "./observation.ts";
import { sayPlanting, subjectOf } from "./subjects.ts";

const BETWEEN = /[,;.:] +(?:and +|but +)?|\.{2,} *| but | - /;

/** Words after which a line as a whole is no report: questions, conditions, choices, jokes and second thoughts. */
const NO_REPORT =
  /\?|\b(?:if|unless|whether|or|dreamt?|dreamed|joke|kidding|mistake|actually|i mean|not really|scratch that|pretend|come back|recover|regrow|survived?|pull through)\b|(?:^|[,.;:!] *)no,/;

/** A clause and what it was found to say, with the name of the one planting it speaks of; null where that is none or several. */
type ReadClause = { readonly facts: readonly Observation[] | null; readonly name: string | null };

/**
 * What each clause of a line says; of those that say nothing, nothing. Clauses may leave out what the one before them has
 * said. Null where none says anything.
 */
export function observationsInClauses(
  attributed: AttributedLine,
  context: DiaryContext,
): readonly Observation[] | null {
  const { text } = attributed;
  if (NO_REPORT.test(text)) return null;
  const clauses = clausesOf(attributed, context).filter((clause) => clause.trim() !== "");
  const found: Observation[] = [];
  let before: ReadClause = { facts: null, name: null };
  for (const clause of clauses) {
    const read = readClause(attributed, clause.trim(), { before, context });
    found.push(...(read.facts ?? []));
    before = { facts: read.facts ?? before.facts, name: read.name ?? before.name };
  }
  const facts = found.filter((each) => each.kind !== "note");
  const gone = facts.some(({ kind }) => kind === "lost");
  if (facts.length === 0) return null;
  return gone ? found.filter(({ kind }) => kind !== "done") : found;
}

/** What stands between commas and the like; where that says nothing as a whole, as `tomatoes and peppers` does, what stands between its `and`s. */
function clausesOf(attributed: AttributedLine, context: DiaryContext): readonly string[] {
  return attributed.text.split(BETWEEN).flatMap((clause) => {
    if (!clause.includes(" and ")) return [clause];
    const whole = observationsInClause(attributed, clause.trim(), context);
    return whole && observed(whole) ? [clause] : clause.split(" and ");
  });
}

type Surroundings = { readonly before: ReadClause; readonly context: DiaryContext };

function readClause(
  attributed: AttributedLine,
  clause: string,
  { before, context }: Surroundings,
): ReadClause {
  // What was watered in was what was named, and not the whole garden.
  if (before.name !== null && /^watered(?: in| well)*$/.test(clause))
    return { facts: null, name: null };
  for (const said of [completed(clause, before), clause, headed(clause, before)]) {
    if (said === null) continue;
    const facts = observationsInClause(attributed, said, context);
    if (facts && (observed(facts) || said === clause))
      return { facts, name: nameOf(facts, context) ?? mentionedIn(clause, attributed, context) };
  }
  return { facts: null, name: mentionedIn(clause, attributed, context) };
}

const PRONOUN = /\b(?:them|those|these|new ones)\b/;
const SAID: Readonly<Record<ObservedStage, string>> = {
  up: "up",
  flower: "in flower",
  "first ripe": "ripe",
};

/** The clause with what it leaves to the one before: `carrots not`, `sowed them again`; null where it leaves nothing. */
function completed(clause: string, { facts, name }: ReadClause): string | null {
  const denied = /^(?<name>.+?) (?:are not|is not|aren't|isn't|not)(?: yet)?$/.exec(clause)?.groups
    ?.name;
  const seen = facts?.find((each) => each.kind === "seen");
  if (denied !== undefined && seen) return `${denied} not ${SAID[seen.stage]}`;
  if (name === null || !PRONOUN.test(clause)) return null;
  return clause.replace(PRONOUN, (said) => (said === "new ones" ? `${name} plants` : name));
}

const BARE =
  /^(?:delayed|postponed|put off|planted|sown|sowed|thinned|netted|covered|weeded|staked|transplanted|planted out|potted on)\b/;

/** `Onions bought and planted`: work without a name is done to what was named before. */
function headed(clause: string, { name }: ReadClause): string | null {
  return name !== null && BARE.test(clause) ? `${name} ${clause}` : null;
}

/** What a gardener calls the one planting that facts are about. */
function nameOf(facts: readonly Observation[], { plans }: DiaryContext): string | null {
  const keys = new Set(facts.flatMap((fact) => ("planting" in fact ? [fact.planting] : [])));
  const [key] = keys;
  const planting = plans.flatMap(({ plantings }) => plantings).find((each) => each.key === key);
  return keys.size === 1 && planting ? sayPlanting(planting) : null;
}

/** The name of the one planting that is named anywhere in a clause. */
function mentionedIn(
  clause: string,
  { line: { day } }: AttributedLine,
  { plans }: DiaryContext,
): string | null {
  const words = clause.split(" ");
  for (const length of [2, 1])
    for (let first = 0; first + length <= words.length; first++) {
      const name = words.slice(first, first + length).join(" ");
      const subject = subjectOf(name, { day, all: true }, plans);
      if ("planting" in subject) return sayPlanting(subject.planting);
    }
  return null;
}
