import { type Day, dayOf, partsOf, plus } from "../../base/index.ts";
import type { DiaryLine } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { type DayReadContext, readDay } from "./dates.ts";
import { entriesOf, itemsOf, sliceWords, type Tree, type Words, wordsAt } from "./tree.ts";

/**
 * The diary's lines taken out of a plan's text before the rest is read, so that prose may have colons, quotes and
 * whatever else a gardener writes. `rest` has the same number of lines, those of the diary empty. Only a list under a
 * top-level `diary:` is taken; anything else stays in `rest`.
 */
export function takeDiary(
  text: string,
  file: string,
): { readonly rest: string; readonly lines: readonly Words[] } {
  const lines = text.split("\n");
  const start = lines.findIndex((line) => /^diary:\s*(?:#.*)?$/.test(line));
  if (start < 0) return { rest: text, lines: [] };
  const after = lines.slice(start + 1).findIndex((line) => /^(?:[^\s#-]|---)/.test(line));
  const end = after < 0 ? lines.length : start + 1 + after;
  const taken = entries(lines.slice(start + 1, end), start + 2, file);
  if (taken === null) return { rest: text, lines: [] };
  const rest = lines.map((line, index) => (index > start && index < end ? "" : line));
  return { rest: rest.join("\n"), lines: taken };
}

/**
 * Each dash begins a line of the diary, which goes on where lines are indented further; null where it is no plain list.
 */
function entries(
  lines: readonly string[],
  firstLine: number,
  file: string,
): readonly Words[] | null {
  const found: Words[] = [];
  let indent: number | null = null;
  for (const [index, raw] of lines.entries()) {
    const comment = raw.indexOf(" # ");
    const line = (comment < 0 ? raw : raw.slice(0, comment)).trimEnd();
    if (line.trim() === "" || line.trim().startsWith("#")) continue;
    const dash = /^( *)- +(?=\S)/.exec(line);
    const deep = /^ */.exec(line)?.[0].length ?? 0;
    const last = found.at(-1);
    if (dash && deep === (indent ?? deep)) {
      indent = deep;
      found.push(wordsIn(line.slice(dash[0].length), file, firstLine + index, dash[0].length + 1));
    } else if (last && indent !== null && deep > indent && !line.startsWith("\t"))
      found[found.length - 1] = { ...last, text: `${last.text} ${line.trim()}` };
    else return null;
  }
  return found;
}

function wordsIn(text: string, file: string, line: number, column: number): Words {
  return {
    text,
    at: { file, line, column },
    where: (offset) => ({ file, line, column: column + offset }),
  };
}

const MONTH = "[A-Za-z]{3,9}\\.?";
const DAY = new RegExp(
  `^["'{ ]*((?:[A-Za-z]{3,9}\\.?,? )?(?:\\d{4}-\\d{1,2}-\\d{1,2}|\\d{1,2}(?:st|nd|rd|th|\\.)? ${MONTH}(?:,? \\d{4})?|${MONTH} \\d{1,2}(?:st|nd|rd|th)?(?:,? \\d{4})?))["']?(?:\\s*[:,–]\\s*|\\s+-\\s+|\\s+|$)`,
);

/**
 * The diary of a plan, in the order of the file, each line with its day and what was written. Problems: those of days;
 * what was written is never wrong.
 */
export function readDiary(
  tree: Tree | null,
  lines: readonly Words[],
  reading: DayReadContext,
): readonly DiaryLine[] {
  return inWrittenOrder(
    [...lines, ...fromTree(tree)].flatMap((words) => readLine(words, reading)),
    reading,
  );
}

/** Days by which two lines that follow each other can lie apart, so that half a year between them is another year. Source: house rule. */
const HALF_YEAR_DAYS = 183;

/**
 * The lines, those at the head of the diary a year earlier that were written in the weeks before the season and without a
 * year: the lines that follow them lie half a year before. A diary with its newest line first has its head at the end.
 */
function inWrittenOrder(
  lines: readonly WrittenLine[],
  { season }: DayReadContext,
): readonly DiaryLine[] {
  const steps = lines.slice(1).map(({ line }, i) => line.day - (lines[i]?.line.day ?? 0));
  const near = steps.filter((step) => Math.abs(step) <= HALF_YEAR_DAYS);
  const isNewestFirst = near.filter((step) => step < 0).length > near.length / 2;
  const oldestFirst = isNewestFirst ? [...lines].reverse() : lines;
  const earlier = new Set<WrittenLine>();
  for (const [i, each] of oldestFirst.entries()) {
    const next = oldestFirst
      .slice(i + 1)
      .find((other) => each.line.day - other.line.day > HALF_YEAR_DAYS);
    if (!season || each.hasYear || !next) break;
    earlier.add(each);
  }
  return lines.map((each) =>
    earlier.has(each) ? { ...each.line, day: yearBefore(each.line.day) } : each.line,
  );
}

function yearBefore(day: Day): Day {
  const { year, month, date } = partsOf(day);
  return dayOf(year - 1, month, date) ?? plus(day, -365);
}

/** A line, and whether its day is written with its year. */
type WrittenLine = { readonly line: DiaryLine; readonly hasYear: boolean };

function fromTree(tree: Tree | null): readonly Words[] {
  if (tree?.kind === "map") return entriesOf(tree).map(({ key, value }) => joinEntry(key, value));
  return itemsOf(tree).flatMap((item) =>
    item.kind === "words" ? [item.words] : entriesOf(item).map((e) => joinEntry(e.key, e.value)),
  );
}

function joinEntry(key: Words, value: Tree): Words {
  const text = value.kind === "words" ? value.words.text : "";
  return { ...key, text: `${key.text}: ${text}` };
}

function readLine(written: Words, reading: DayReadContext): readonly WrittenLine[] {
  const quoted = /^(["']).*\1$/.test(written.text);
  const words = quoted ? sliceWords(written, 1, written.text.length - 1) : written;
  const found = DAY.exec(words.text);
  const colon = words.text.indexOf(":");
  const end = found ? found[0].length : colon < 0 ? 0 : colon + 1;
  if (end === 0) {
    const is = `${words.text.slice(0, 60)} has no day`;
    reading.problems.push(
      diagnostic("day-unclear", words.at, is, "Write its day first: 24 May: carrots up"),
    );
    return [];
  }
  const said = found?.[1] ?? words.text.slice(0, colon);
  const day = readDay(dayWords(words, said), reading);
  if (day === null) return [];
  const text = unquoted(sliceWords(words, end).text);
  return [{ line: { day, text, at: written.at }, hasYear: /\d{4}/.test(said) }];
}

function dayWords(words: Words, text: string): Words {
  const start = Math.max(0, words.text.indexOf(text));
  return text.trim() === ""
    ? wordsAt(text, words.at)
    : sliceWords(words, start, start + text.length);
}

function unquoted(text: string): string {
  const quoted = /^(["'])(.*)\1$/.exec(text);
  return (quoted?.[2] ?? text.replace(/["'} ]+$/, (end) => (/[}]/.test(end) ? "" : end))).trim();
}
