import { cropNamed } from "../../crops/index.ts";
import { withoutLead } from "./asides.ts";
import type { AttributedLine } from "./attribute.ts";
import { type DiaryContext, note, observed } from "./clause.ts";
import { observationsInClause } from "./clause-facts.ts";
import { type ClauseBefore, completed } from "./ellipsis.ts";
import type { Observation } from "./observation.ts";
import { isOfPart, PICKING, partly } from "./partly.ts";
import { isShare } from "./share.ts";
import { sayPlanting, subjectOf } from "./subjects.ts";

const BETWEEN =
  /[,;.:!]+ +(?:and +|but +|so +)?|\.{2,} *|!+$| (?<!all |everything |nothing )but | - | – | so (?!far|much|many|few|small|big|dry|wet|hard|hot|cold|late|early|on\b|good|bad|cute)| that bad | (?=gave (?:everything|the lot) )| (?=i (?:lifted|pulled|cut|dug|picked|took) (?:it|them|the)\b)| (?=we (?:dug|pulled|ripped|lifted|cut|picked|binned) (?:them|it|those)\b)| because /;

/** A clause that asks, by the word that it begins with; the rest of its line may still report. */
const ASKED =
  /(?:^|(?<=[,.;!] ))(?:and |but |or )?(?:is|are|was|were|do|does|did|should|shall|can|could|would|will|what|when|why|how|who|which|where|anyone|anybody|has anyone|(?:they|it) (?:might|may|could|will))\b[^,.;!?]*\?+ ?/g;

/** Words after which a line as a whole is no report: questions, conditions, choices, jokes and second thoughts. */
const NO_REPORT =
  /\?|\b(?:if|unless|whether|or|dreamt?|dreamed|joke|kidding|mistake|actually|i mean|not really|scratch that|pretend|come back|recover|regrow|survived?|pull through|(?:stuck|put|stood|pushed|popped|firmed|propped) (?:\w+ ){0,4}back(?: up| in)?)\b|(?:^|[,.;:!] *)no,/;

/** A clause beside its facts, with the name it leaves to those behind it. */
type ReadClause = ClauseBefore & {
  readonly own: readonly Observation[];
  /** What it names where nothing of it was understood. */
  readonly unread: string | null;
};

/**
 * What each clause of a line says; of those that say nothing, nothing. Clauses may leave out what the one before them has
 * said. Null where none says anything.
 */
export function observationsInClauses(
  attributed: AttributedLine,
  context: DiaryContext,
): readonly Observation[] | null {
  const text = attributed.text.replace(ASKED, "");
  if (NO_REPORT.test(text)) return null;
  const clauses = clausesOf({ ...attributed, text: attributed.text.replace(/\?/g, ",") }, context);
  let found: readonly Observation[] = [];
  let before: ReadClause = { text: "", facts: null, name: null, own: [], unread: null };
  const unread: { readonly name: string; readonly fact: Observation }[] = [];
  for (const said of clauses.map((each) => each.trim()).filter(Boolean)) {
    const clause = withoutLead(said);
    if (isShare(said) && before.own.length > 0) {
      const last = new Set(before.own);
      found = found.map((each) => (last.has(each) ? partly(each, attributed.line, context) : each));
      continue;
    }
    const read = readClause(attributed, clause, { before, context });
    found = [...found, ...read.own];
    if (read.unread !== null)
      unread.push({
        name: read.unread,
        fact: note(attributed.line, `“${clause}” is not understood`),
      });
    before = { ...read, facts: read.facts ?? before.facts, name: read.name ?? before.name };
  }
  if (!found.some(({ kind }) => kind !== "note")) {
    const part = found.find((each) => each.kind === "note" && isOfPart(each));
    return part ? [part] : null;
  }
  const told = new Set(found.map((each) => nameOf([each], context)));
  const rest = unread.filter(({ name }) => !told.has(name)).map(({ fact }) => fact);
  return [...withoutGone(found), ...rest];
}

/** Without work on what the same line says is lost, and without remarks on words that are no crop. */
function withoutGone(found: readonly Observation[]): readonly Observation[] {
  const lost = new Set(found.flatMap((each) => (each.kind === "lost" ? [each.planting] : [])));
  const failed = new Set(found.flatMap((each) => (each.kind === "failed" ? [each.planting] : [])));
  const cleared = new Set(
    found.flatMap((each) => (each.kind === "done" && each.step === "last" ? [each.planting] : [])),
  );
  const isPicking = (each: Observation) =>
    each.kind === "done" && each.practice === PICKING && each.step === null;
  const once = new Map(found.map((each) => [JSON.stringify(each), each]));
  return [...once.values()].filter((each) => {
    if ("planting" in each && cleared.has(each.planting) && isPicking(each)) return false;
    if (each.kind === "done")
      return !lost.has(each.planting) && !(failed.has(each.planting) && each.practice === PICKING);
    if (each.kind !== "note") return true;
    const missing = /^no (?:planting|bed) is called (.+)$/.exec(each.why ?? "")?.[1];
    return missing === undefined ? each.why !== null : cropNamed(missing) !== null;
  });
}

/** What stands between commas and the like; where that says nothing as a whole, as `tomatoes and peppers` does, what stands between its `and`s. */
function clausesOf(attributed: AttributedLine, context: DiaryContext): readonly string[] {
  return attributed.text.split(BETWEEN).flatMap((clause) => {
    if (!clause.includes(" and ")) return [clause];
    const whole = observationsInClause(attributed, clause.trim(), context);
    return whole && observed(whole) ? [clause] : clause.split(" and ");
  });
}

type Surroundings = { readonly before: ClauseBefore; readonly context: DiaryContext };

function readClause(
  attributed: AttributedLine,
  clause: string,
  { before, context }: Surroundings,
): ReadClause {
  const mentioned = mentionedIn(clause, attributed, context);
  const said = { text: clause, facts: null, name: mentioned, own: [], unread: null };
  // What was watered in was what was named, and not the whole garden.
  if (before.name !== null && /^watered(?: in| well)*$/.test(clause)) return said;
  let nearly: readonly Observation[] | null = null;
  for (const wording of [...completed(clause, before, context), clause]) {
    const facts = observationsInClause(attributed, wording, context);
    if (facts && observed(facts))
      return { ...said, facts, name: nameOf(facts, context) ?? mentioned, own: facts };
    nearly ??= wording === clause ? facts : null;
  }
  if (nearly !== null) return { ...said, facts: nearly, own: nearly };
  return { ...said, unread: mentioned };
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
