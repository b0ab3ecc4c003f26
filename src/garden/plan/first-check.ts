import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from "yaml";
import { numberFrom, type Problem, sayAdvice } from "../../base/index.ts";
import {
  type AnswerPath,
  coordinatesIn,
  type FirstAnswers,
  isBlankBed,
  isBlankPerson,
} from "../model/first-answers.ts";
import { bedOf, cropParts } from "./first-plan.ts";

/** Something wrong or doubtful in an answer, and what would be right; `field` empty where it is in none of them. */
export type AnswerProblem = {
  readonly field: AnswerPath;
  readonly weight: Problem["weight"];
  readonly says: string;
};

/**
 * What is wrong in answers before a plan is made of them: what is missing, or could not be told from another in a plan. The year
 * must lie within `years`, both inclusive; so an old one is told and not taken in silence.
 */
export function answerProblems(
  answers: FirstAnswers,
  years: { readonly from: number; readonly to: number },
): readonly AnswerProblem[] {
  const { garden, year, clock, where, people, beds, crops } = answers;
  const inYears = /^\d{4}$/.test(year) && Number(year) >= years.from && Number(year) <= years.to;
  return [
    ...problemIf(garden === "", "garden", "Give the garden a name, such as Mill End."),
    ...problemIf(!inYears, "year", `Write a year from ${years.from} to ${years.to}.`),
    ...problemIf(clock === "", "clock", "Choose the clock that the garden goes by."),
    ...problemIf(
      where !== "" && coordinatesIn(where) === null,
      "where",
      "Write latitude and longitude in degrees, such as 46.59, -112.04.",
    ),
    ...frostProblems(answers),
    ...people.flatMap((person, i) =>
      isBlankPerson(person) ? [] : nameProblems("people", people, i),
    ),
    ...beds.flatMap((bed, i) =>
      isBlankBed(bed) ? [] : [...nameProblems("beds", beds, i), ...bedProblems(answers, i)],
    ),
    ...crops.flatMap((_, i) => cropProblems(answers, i)),
  ];
}

function problemIf(wrong: boolean, field: AnswerPath, says: string): readonly AnswerProblem[] {
  return wrong ? [{ field, weight: "problem", says }] : [];
}

function frostProblems({ weather, lastFrost, firstFrost }: FirstAnswers): readonly AnswerProblem[] {
  if (weather !== "") return [];
  return [
    ...problemIf(lastFrost === "", "lastFrost", "Write a day, such as about 6 May, or none."),
    ...problemIf(firstFrost === "", "firstFrost", "Write a day, such as about 2 Oct, or none."),
  ];
}

function nameProblems(
  kind: "people" | "beds",
  rows: readonly { readonly name: string }[],
  i: number,
): readonly AnswerProblem[] {
  const name = rows[i]?.name ?? "";
  const field = `${kind}.${i}.name`;
  const of = kind === "people" ? "person" : "bed";
  if (name === "") return problemIf(true, field, `Give this ${of} a name.`);
  const first = rows.findIndex((row) => row.name === name);
  return problemIf(
    first < i,
    field,
    `Another ${of} is called ${name}. Give this one its own name.`,
  );
}

function bedProblems({ beds }: FirstAnswers, i: number): readonly AnswerProblem[] {
  const { kind, length, width, count } = beds[i] ?? { kind: "bed" };
  const at = `beds.${i}`;
  if (kind === "bags" || kind === "pots")
    return problemIf(!isCount(count ?? ""), `${at}.count`, `Write how many ${kind}, such as 6.`);
  const missing = length === "" ? "length" : "width";
  const half = (length === "") !== (width === "");
  return problemIf(half, `${at}.${missing}`, "Write this side too, or neither of them.");
}

function cropProblems({ crops }: FirstAnswers, i: number): readonly AnswerProblem[] {
  const { amount, unit } = crops[i] ?? { amount: "", unit: "plants" };
  if (amount === "") return [];
  const wrong = unit === "length" ? !(numberFrom(amount) ?? 1) : !isCount(amount);
  return problemIf(wrong, `crops.${i}.amount`, `Write how many ${unit}, such as 6.`);
}

const isCount = (said: string) => /^[1-9]\d{0,4}$/.test(said);

/** What reading a first plan's text reported, each at the answer that it came from. */
export function problemsAtAnswers(
  answers: FirstAnswers,
  text: string,
  problems: readonly Problem[],
): readonly AnswerProblem[] {
  const lines = new LineCounter();
  const { contents } = parseDocument(text, { lineCounter: lines });
  return problems.map((problem) => {
    const offset = (lines.lineStarts[problem.at.line - 1] ?? 0) + problem.at.column - 1;
    const path = pathAt(contents, offset);
    const field = fieldOf(path, answers, lineOf(text, problem), problem.at.column - 1);
    return { field, weight: problem.weight, says: sayAdvice(problem) };
  });
}

const lineOf = (text: string, { at }: Problem) => text.split("\n")[at.line - 1] ?? "";

/** The keys and places that lead to an offset of the text. */
function pathAt(node: unknown, offset: number): readonly (string | number)[] {
  if (isMap(node))
    for (const { key, value } of node.items) {
      const [from, to] = [startOf(key), endOf(value) ?? endOf(key) ?? 0];
      if (from !== null && offset >= from && offset < to)
        return [isScalar(key) ? String(key.value) : "", ...pathAt(value, offset)];
    }
  if (isSeq(node))
    for (const [i, item] of node.items.entries()) {
      const [from, to] = [startOf(item), endOf(item) ?? 0];
      if (from !== null && offset >= from && offset < to) return [i, ...pathAt(item, offset)];
    }
  return [];
}

const rangeOf = (node: unknown) => (node as Node | null)?.range ?? null;
const startOf = (node: unknown) => rangeOf(node)?.[0] ?? null;
const endOf = (node: unknown) => rangeOf(node)?.[2] ?? null;

/** Which answer stands below each key of a plan's place. */
const PLACE_FIELDS: Readonly<Record<string, AnswerPath>> = {
  clock: "clock",
  latitude: "where",
  longitude: "where",
  "last frost": "lastFrost",
  "first frost": "firstFrost",
  "hottest afternoons": "hottest",
  "coldest nights": "coldest",
  weather: "where",
  forecast: "forecast",
};

function fieldOf(
  path: readonly (string | number)[],
  answers: FirstAnswers,
  line: string,
  column: number,
): AnswerPath {
  const [top, name, key, i] = path;
  if (top === "place") return PLACE_FIELDS[String(name)] ?? "lastFrost";
  if (top === "people") return `people.${named(answers.people, name)}.${key ?? "name"}`;
  if (top === "crops") return cropField(answers, null, Number(name), { line, column });
  if (top !== "beds") return top === undefined ? "" : String(top);
  const bed = named(answers.beds, name);
  if (key === "crops") return cropField(answers, bed, Number(i), { line, column });
  const { kind } = answers.beds[bed] ?? { kind: "bed" };
  const size = kind === "bags" || kind === "pots" ? "holds" : "length";
  return `beds.${bed}.${key === "is" ? size : "name"}`;
}

const named = (rows: readonly { readonly name: string }[], name: unknown) =>
  rows.findIndex((row) => row.name === name);

/** The answer of the bed's crop of that place which stands at that column of its line. */
function cropField(
  answers: FirstAnswers,
  bed: number | null,
  place: number,
  { line, column }: { readonly line: string; readonly column: number },
): AnswerPath {
  const here = answers.crops.flatMap((crop, i) =>
    bedOf(crop, answers) === bed ? [{ crop, i }] : [],
  );
  const found = here[place];
  if (!found) return "";
  const parts = cropParts(found.crop, answers.measures);
  const part = parts.findLast(({ words }) => column >= line.lastIndexOf(words)) ?? parts[0];
  return `crops.${found.i}.${part?.of ?? "amount"}`;
}
