import type { DiaryContext, LineBy } from "./clause.ts";
import type { Observation } from "./observation.ts";

type Facts = readonly Observation[] | null;
type ReadClauses = { readonly context: DiaryContext; readonly facts: Map<string, Facts> };

/** The clauses of a line that were read, by the line. */
const readClauses = new WeakMap<LineBy["line"], ReadClauses>();

/**
 * The facts of a clause of a line, read the first time that they are asked for: a line is read whole, in other orders and
 * clause by clause. What is read in another context than the first is read anew.
 */
export function readOnce(
  { line }: LineBy,
  { clause, context }: { readonly clause: string; readonly context: DiaryContext },
  read: () => Facts,
): Facts {
  const clauses = readClauses.get(line) ?? { context, facts: new Map() };
  if (clauses.context !== context) return read();
  readClauses.set(line, clauses);
  const known = clauses.facts.get(clause);
  if (known !== undefined) return known;
  const facts = read();
  clauses.facts.set(clause, facts);
  return facts;
}
