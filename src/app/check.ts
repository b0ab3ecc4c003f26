import { type Problem, sayDay, sortProblems } from "../base/index.ts";
import {
  bedDoubts,
  buildYear,
  doubtsOf,
  type Garden,
  horizonOf,
  PRACTICES,
} from "../engine/index.ts";
import {
  orphanDoubts,
  type PlanResult,
  type PlanSource,
  parseDiary,
  parseDiaryLines,
  problemsBetweenYears,
  readPlan as readText,
  resolveConflicts,
} from "../garden/index.ts";
import type { DiaryLine, FilledDefault, Plan } from "../garden/model/index.ts";

export type { Problem } from "../base/index.ts";
export { sayProblem } from "../base/index.ts";
export type { DiaryLine, Plan } from "../garden/model/index.ts";

/** A year's plan as it is written, and where that text comes from. */
export type PlanText = PlanSource & { readonly text: string };

/** A plan's text read and checked by itself, its practices by the words that ours have. */
export function readPlan(text: string, at: PlanSource): PlanResult {
  return readText(text, at, PRACTICES);
}

/**
 * Some years of one garden after reading: the garden, null with a problem in any file, every plan that could be read,
 * and all problems and doubts.
 */
export type GardenReading = {
  readonly garden: Garden | null;
  readonly plans: readonly Plan[];
  readonly problems: readonly Problem[];
};

/**
 * Reads all years of one garden, in year order: problems and doubts of each text, of its season, and between the years,
 * file by file. The doubts of its beds cost a build and come from `doubtsOfBeds`.
 */
export function readGarden(files: readonly PlanText[]): GardenReading {
  const read = files.map((file) => readPlan(file.text, file));
  const plans = read.flatMap(({ plan }) => plan ?? []);
  const whole = plans.length === files.length;
  const problems = sortProblems([
    ...read.flatMap((each) => each.problems),
    ...(whole ? doubtsBeforeBuild(plans) : plans.flatMap((plan) => doubtsOf([plan]))),
  ]);
  const sound = whole && problems.every(({ weight }) => weight === "doubt");
  return { garden: sound ? { id: files[0]?.garden ?? "", plans } : null, plans, problems };
}

/** What is doubtful in plans and between them before anything is scheduled. */
const doubtsBeforeBuild = (
  plans: readonly Plan[],
  answered: readonly DiaryLine[] = [],
): readonly Problem[] => [
  ...doubtsOf(plans),
  ...problemsBetweenYears(plans),
  ...orphanDoubts(answered, plans),
];

/**
 * The doubts of a garden's beds once its years are built, file by file. They depend on no day and on nothing published.
 */
export function doubtsOfBeds({ id, plans }: Garden): readonly Problem[] {
  return bedDoubts(buildYear({ id, plans, baseline: {} }, horizonOf(plans, 0), {}));
}

/** A checked text: its plan, null where it has a problem, and all problems and doubts, by line. */
export type PlanCheck = { readonly plan: Plan | null; readonly problems: readonly Problem[] };

/**
 * Checks one year's text among the other years of its garden, just as all files are checked together: its own problems
 * and doubts, those of its season, those from other years, those of its beds, and answers that were given to what it no longer
 * names.
 */
export function checkPlan(
  file: PlanText,
  others: readonly Plan[],
  answered: readonly DiaryLine[] = [],
): PlanCheck {
  const { plan, problems } = readPlan(file.text, file);
  if (plan === null) return { plan, problems };
  const plans = [...others.filter(({ year }) => year !== plan.year), plan].sort(
    (a, b) => a.year - b.year,
  );
  const doubts = [
    ...doubtsBeforeBuild(plans, answered),
    ...doubtsOfBeds({ id: plan.garden, plans }),
  ];
  const own = doubts.filter(({ at }) => at.file === plan.file);
  return { plan, problems: sortProblems([...problems, ...own]) };
}

/**
 * The report on a plan without a problem: what is in it, what was filled in, and diary lines that move nothing or can't
 * be right.
 */
export type PlanReport = {
  readonly file: string;
  readonly plantings: number;
  readonly beds: number;
  readonly filled: readonly FilledDefault[];
  /** Diary lines that were not understood, with the reason where they nearly were. */
  readonly notes: readonly string[];
  /** Diary lines that another line corrects, or that can't be right. */
  readonly corrected: readonly string[];
};

/** The report of one of a garden's plans. */
export function reportPlan(plan: Plan, { plans }: Pick<Garden, "plans">): PlanReport {
  const { file, plantings, beds, filled } = plan;
  return {
    file,
    plantings: plantings.length,
    beds: beds.length,
    filled,
    notes: notesIn(plan, plans),
    corrected: correctedIn(plan, plans),
  };
}

function notesIn(plan: Plan, plans: readonly Plan[]): readonly string[] {
  return parseDiary(plan.diary, plans, PRACTICES).flatMap((observation) => {
    if (observation.kind !== "note") return [];
    const { day, text, why } = observation;
    return [`${sayDay(day)}: ${text}${why === null ? "" : ` (${why})`}`];
  });
}

function correctedIn(plan: Plan, plans: readonly Plan[]): readonly string[] {
  const read = parseDiaryLines(plans, PRACTICES);
  const { remarks } = resolveConflicts(
    read.flatMap(({ observations }) => observations),
    plans,
    PRACTICES,
  );
  const lineOf = new Map(
    read.flatMap(({ line, observations }) => observations.map((each) => [each, line] as const)),
  );
  return remarks.flatMap(({ observation, is }) => {
    const line = lineOf.get(observation);
    return line?.at.file === plan.file ? [`${sayDay(line.day)}: ${line.text} (${is})`] : [];
  });
}
