import { type DaySpan, type Measures, type Problem, sortProblems } from "../../base/index.ts";
import type { Plan, Site } from "../model/plan.ts";
import { seasonOf } from "../model/season.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { withPredecessors } from "./after.ts";
import { readAway } from "./away.ts";
import { readBeds } from "./beds.ts";
import { checkPlan } from "./check.ts";
import { diagnostic } from "./codes.ts";
import { readDiary, takeDiary } from "./diary.ts";
import { frostDoubts } from "./frost-doubts.ts";
import { inKeyForm } from "./keyform.ts";
import { readMeasures } from "./measures.ts";
import { readPeople } from "./people.ts";
import { readPlace, readRisk, type WordReadContext } from "./place.ts";
import { readPlantings } from "./plantings.ts";
import {
  entriesOf,
  itemsOf,
  numberUnder,
  type Tree,
  valueUnder,
  type Words,
  wordsUnder,
} from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** The garden's id, the file's name for problems, and the texts of the files beside it by their names. */
export type PlanSource = {
  readonly garden: string;
  readonly file: string;
  readonly beside?: Readonly<Record<string, string>>;
};

/** A plan, or null exactly when some problem has weight "problem"; problems and doubts in reading order. */
export type PlanResult = { readonly plan: Plan | null; readonly problems: readonly Problem[] };

/**
 * A plan's text, read and checked, practices by their words in `vocabulary`. Never throws, whatever the text. The problems it can raise are listed in codes.ts.
 */
export function readPlan(text: string, at: PlanSource, vocabulary: Vocabulary): PlanResult {
  const { rest, lines } = takeDiary(text, at.file);
  const { tree, problems } = treeOf(rest, at.file);
  if (tree === null) return { plan: null, problems };
  if (tree.kind !== "map") return { plan: null, problems: [...problems, notAPlan(tree)] };
  const many = tooMany(tree, lines);
  if (many) return { plan: null, problems: [...problems, many] };
  const reading: WordReadContext = { problems: [...problems], filled: [], vocabulary };
  const keyed = inKeyForm(tree, reading.problems);
  reading.problems.push(...checkPlan(keyed));
  const plan = build(keyed, lines, { at, text, reading });
  if (isWrong(reading.problems))
    return { plan: null, problems: sortProblems(once(plain(reading.problems))) };
  reading.problems.push(...frostDoubts(plan, keyed));
  return { plan, problems: sortProblems(once(reading.problems)) };
}

function notAPlan(tree: Tree): Problem {
  const is = tree.kind === "nothing" ? "The file is empty" : "The file is not made of keys";
  return diagnostic("not-a-plan", tree.at, is, "Write garden:, year: and place: first");
}

/** How many of each a plan may have. Source: house rule: ten times a large garden's, so that reading stays quick. */
const MOST = { plantings: 500, beds: 200, people: 50, away: 500, diary: 2000 } as const;

function tooMany(tree: Tree, lines: readonly Words[]): Problem | null {
  const beds = entriesOf(valueUnder(tree, "beds"));
  const lists = [valueUnder(tree, "crops"), ...beds.map(({ value }) => valueUnder(value, "crops"))];
  const counts = {
    plantings: lists.reduce((sum, list) => sum + itemsOf(list).length, 0),
    beds: beds.length,
    people: entriesOf(valueUnder(tree, "people")).length,
    away: itemsOf(valueUnder(tree, "away")).length,
    diary: lines.length + itemsOf(valueUnder(tree, "diary")).length,
  };
  const kinds = ["plantings", "beds", "people", "away", "diary"] as const;
  const kind = kinds.find((one) => counts[one] > MOST[one]);
  if (!kind) return null;
  const is = `There are ${counts[kind]} ${kind === "away" ? "absences" : kind === "diary" ? "diary lines" : kind}`;
  return diagnostic("too-many", tree.at, is, `Keep at most ${MOST[kind]} in one plan`);
}

const isWrong = (problems: readonly Problem[]) => problems.some((p) => p.weight === "problem");

/** Where `people:` itself is misspelt, names of people that are not found are no further mistake. */
function plain(problems: readonly Problem[]): readonly Problem[] {
  const misspelt = problems.some((p) => p.code === "unknown-key" && / people$/.test(p.shouldBe));
  return misspelt ? problems.filter(({ code }) => code !== "nobody-called") : problems;
}

/** What an alias stands for is read at every use; a problem in it is reported once. */
function once(problems: readonly Problem[]): readonly Problem[] {
  const place = ({ code, at, is }: Problem) => `${at.file}:${at.line}:${at.column}:${code}:${is}`;
  return [...new Map(problems.map((problem) => [place(problem), problem])).values()];
}

type PlanBuildInput = {
  readonly at: PlanSource;
  readonly text: string;
  readonly reading: WordReadContext;
};

function build(tree: Tree, lines: readonly Words[], { at, text, reading }: PlanBuildInput): Plan {
  const year = yearOf(tree);
  reading.problems.push(...unlikeFile(tree, year, at.file));
  const place = valueUnder(tree, "place");
  const measures: Measures = readMeasures(tree, text, reading);
  const beside = { file: at.file, texts: at.beside ?? {} };
  const { site, frostless } = readPlace(place, { ...reading, year, measures, beside });
  const risk = readRisk(valueUnder(tree, "risk"), reading);
  const people = readPeople(valueUnder(tree, "people"), reading);
  const days = { ...reading, season: seasonFor(year, site, frostless) };
  const away = readAway(valueUnder(tree, "away"), people, { ...days, clock: site.clock, beside });
  const beds = readBeds(valueUnder(tree, "beds"), reading, site.greenhouse?.keptAbove ?? null);
  const found = readPlantings(tree, { ...days, year, people, beds });
  return {
    garden: at.garden,
    name: wordsUnder(tree, "garden")?.text ?? "",
    year: year ?? 0,
    file: at.file,
    measures,
    site,
    risk,
    people,
    away,
    beds,
    plantings: withPredecessors(found, reading.problems),
    diary: readDiary(valueUnder(tree, "diary"), lines, days),
    assume: wordsUnder(tree, "assume")?.text === "open" ? "open" : "done",
    filled: reading.filled,
  };
}

/** The year, or null where it can't be one, which the check of the shape has reported. */
function yearOf(tree: Tree): number | null {
  const year = numberUnder(tree, "year");
  return year !== null && Number.isInteger(year) && year >= 1970 && year < 2200 ? year : null;
}

/** A doubt where the file is named after another year than its own, as one copied from last year's often is. */
function unlikeFile(tree: Tree, year: number | null, file: string): readonly Problem[] {
  const named = /(?:^|[/\\])(?<named>\d{4})\.ya?ml$/.exec(file)?.groups?.named;
  const said = valueUnder(tree, "year");
  if (year === null || said === null || named === undefined || Number(named) === year) return [];
  const is = `The file is named ${named}, and its year is ${year}`;
  return [
    diagnostic(
      "year-unlike-file",
      said.at,
      is,
      `Write year: ${named}, or name the file ${year}.yaml`,
    ),
  ];
}

/**
 * The season that written days fall in; null where year or frost dates are wrong, so that nothing more is reported
 * about days.
 */
function seasonFor(year: number | null, site: Site, frostless: boolean): DaySpan | null {
  if (year === null || (site.lastFrost === null && !frostless)) return null;
  return seasonOf({ year, site });
}
