/** Every plain sentence that a pattern of deeds fits, its name put in: choices taken one by one, what may be repeated left out or said once. */
export function sentencesOf(pattern: RegExp, name: string): readonly string[] {
  const { source } = pattern;
  const [endings, end] = choices(source.slice(1, -1), 0, name);
  if (end !== source.length - 2) throw new Error(`cannot read ${source} after ${end}`);
  return [...new Set(endings)];
}

type Read = readonly [sentences: readonly string[], end: number];

/** Alternatives up to a closing bracket or the end. */
function choices(source: string, from: number, name: string): Read {
  const all: string[] = [];
  let [row, at] = sequence(source, from, name);
  all.push(...row);
  while (source[at] === "|") {
    [row, at] = sequence(source, at + 1, name);
    all.push(...row);
  }
  return [all, at];
}

function sequence(source: string, from: number, name: string): Read {
  let [said, at]: [readonly string[], number] = [[""], from];
  while (at < source.length && source[at] !== "|" && source[at] !== ")") {
    const [piece, after] = atom(source, at, name);
    const optional = source[after] === "?" || source[after] === "*";
    const next = optional ? ["", ...piece] : piece;
    said = said.flatMap((head) => next.map((tail) => head + tail));
    at = optional ? after + 1 : after;
  }
  return [said, at];
}

function atom(source: string, at: number, name: string): Read {
  const subject = "(?<subject>.+?)";
  if (source.startsWith(subject, at)) return [[name], at + subject.length];
  if (!source.startsWith("(?:", at)) return [[source[at] ?? ""], at + 1];
  const [inside, end] = choices(source, at + 3, name);
  return [inside, end + 1];
}
