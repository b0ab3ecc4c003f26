import type { YAMLError } from "yaml";
import type { Problem, TextPosition } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";

/**
 * What the YAML parser reports, in a gardener's words: `tab`, `indent`, `colon`, `unclosed`, `unreadable`. At most two,
 * on different lines, because later faults mostly come from the first. Empty for no faults.
 */
export function explainYamlFaults(
  faults: readonly YAMLError[],
  text: string,
  place: (offset: number) => TextPosition,
): readonly Problem[] {
  const problems = faults.slice(0, 20).map((fault) => sayFault(fault, text, place));
  const first = problems[0];
  const other = problems.find(({ at }) => first && at.line > first.at.line + 1);
  return [first, first?.code === "unclosed" ? undefined : other].filter((p) => p !== undefined);
}

function sayFault(
  fault: YAMLError,
  text: string,
  place: (offset: number) => TextPosition,
): Problem {
  const at = place(fault.pos[0]);
  const line = text.split("\n")[at.line - 1] ?? "";
  if (fault.code === "TAB_AS_INDENT" || /^ *\t/.test(line))
    return diagnostic("tab", at, "A tab stands here", "Use spaces to indent");
  const open = openAbove(at, text);
  if (open)
    return diagnostic(
      "unclosed",
      open,
      "A brace or bracket opens here and is never closed",
      "Close it",
    );
  switch (fault.code) {
    case "BAD_INDENT":
      return diagnostic("indent", at, "This line is indented unlike its neighbours", "Line it up");
    case "BLOCK_AS_IMPLICIT_KEY":
    case "MULTILINE_IMPLICIT_KEY":
      return diagnostic(
        "colon",
        at,
        "A colon is missing or one too many near here",
        "Write key: value, and put words with a colon in quotes",
      );
    case "MISSING_CHAR":
      return missingChar(fault, text, place);
    default:
      return diagnostic(
        "unreadable",
        at,
        "This cannot be read",
        "Check the line's colons, dashes, quotes and indentation",
      );
  }
}

/** Where a bracket was opened and not closed in one of the last lines with words before a position, or null. */
function openAbove(at: TextPosition, text: string): TextPosition | null {
  const lines = text.split("\n").slice(0, at.line);
  for (let n = lines.length, seen = 0; n > 0 && seen < 3; n--) {
    const line = (lines[n - 1] ?? "").replace(/(?:^|\s)#.*$/, "");
    if (line.trim() === "") continue;
    seen += 1;
    const open = openIn(line);
    if (open >= 0) return { ...at, line: n, column: open + 1 };
  }
  return null;
}

/** The offset of the last bracket of a line that the line does not close, or -1; quoted ones do not count. */
function openIn(line: string): number {
  const open: number[] = [];
  const bare = line.replace(/"[^"]*"|'[^']*'/g, (quoted) => " ".repeat(quoted.length));
  for (const [at, letter] of [...bare].entries()) {
    if (letter === "[" || letter === "{") open.push(at);
    if (letter === "]" || letter === "}") open.pop();
  }
  return open.at(-1) ?? -1;
}

function missingChar(
  fault: YAMLError,
  text: string,
  place: (offset: number) => TextPosition,
): Problem {
  const at = place(fault.pos[0]);
  if (/quote/.test(fault.message)) {
    const quote = fault.message.includes("'") ? "'" : '"';
    const opened = text.lastIndexOf(quote, fault.pos[0] - 1);
    const from = opened < 0 ? at : place(opened);
    return diagnostic("unclosed", from, "A quote opens here and is never closed", "Close it");
  }
  if (/flow/i.test(fault.message))
    return diagnostic("unclosed", at, "A brace or bracket is never closed", "Close it");
  return diagnostic("colon", at, "A colon is missing near here", "Write key: value");
}
