import { CsvError, parse } from "csv-parse/sync";
import type { Problem, TextPosition } from "../../base/index.ts";

/** A row's cells, and the position of each in the file. */
export type TableRow = {
  readonly cells: readonly string[];
  /** The position of the cell with that index, from 0, or of the row's end where it has fewer. */
  readonly at: (index: number) => TextPosition;
};

/** A file of cells: its head and the rows below it, or what keeps it from being read. */
export type Table =
  | { readonly head: TableRow; readonly rows: readonly TableRow[] }
  | { readonly problem: Problem };

/** Separators a station's file may have; the one that is most frequent in its first line is taken. */
const SEPARATORS = [",", ";", "\t"] as const;

const LOOK = "Give a station's file of daily lows and highs, with the names of the columns on top";

/** A problem of a station's file. */
export function wrong(code: string, at: TextPosition, is: string, shouldBe: string): Problem {
  return { code, weight: "problem", at, is, shouldBe };
}

function separatorOf(text: string): string {
  const line = text.split(/\r?\n/, 50).find((each) => /\S/.test(each) && !each.startsWith("#"));
  const count = (separator: string) => (line ?? "").split(separator).length;
  return [...SEPARATORS].sort((a, b) => count(b) - count(a))[0] ?? ",";
}

/** Letters of a row from its start to the cell of that index, quotes counted. */
function columnOf(raw: string, index: number, separator: string): number {
  let [cell, quoted] = [0, false];
  for (let i = 0; i < raw.length; i++) {
    if (cell === index) return i + 1;
    if (raw[i] === '"') quoted = !quoted;
    else if (raw[i] === separator && !quoted) cell += 1;
  }
  return Math.max(raw.length, 1);
}

type Parsed = {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: { readonly lines: number };
};

/** A control character that no text has; line ends and tabs are allowed. */
const NO_TEXT = /[^\P{Cc}\t\r\n]/u;

/** The text of a row alone; the parser includes comments and empty lines before it, and its line end. */
const alone = (raw: string) => raw.replace(/^(?:\uFEFF|#.*\r?\n|[ \t]*\r?\n)*/, "").trimEnd();

function rowOf({ record, raw, info }: Parsed, file: string, separator: string): TableRow {
  const at = (index: number) => {
    const text = alone(raw);
    const line = info.lines - (text.split("\n").length - 1);
    return { file, line, column: columnOf(text, index, separator) };
  };
  return { cells: record, at };
}

/**
 * The cells of a file of comma, semicolon or tab separated values. Cells may be quoted; empty lines and lines that
 * begin with # are skipped, and rows may be shorter or longer than the head. Problem: `station-unreadable`, also for a
 * file with control characters, so that none of them is ever printed.
 */
export function tableOf(text: string, file: string): Table {
  if (NO_TEXT.test(text)) return nothing(file, 1, "This is no text");
  const separator = separatorOf(text);
  const options = {
    delimiter: separator,
    bom: true,
    trim: true,
    info: true,
    raw: true,
    comment: "#",
    comment_no_infix: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
  };
  try {
    const parsed = parse(text, options) as unknown as readonly Parsed[];
    const [head, ...rows] = parsed.map((each) => rowOf(each, file, separator));
    if (head && rows.length > 0) return { head, rows };
    return nothing(file, 1, "There are no rows of days in it");
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = "lines" in error && typeof error.lines === "number" ? error.lines : 1;
    return nothing(file, line, "A quote is never closed, or closed inside a cell");
  }
}

function nothing(file: string, line: number, is: string): Table {
  return { problem: wrong("station-unreadable", { file, line, column: 1 }, is, LOOK) };
}
