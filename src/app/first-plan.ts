import { dayOrThrow, plus, sayDay, sortProblems, temperatureFrom } from "../base/index.ts";
import { frostsByTemperatures, GUESSED_SPREAD_DAYS } from "../engine/index.ts";
import {
  type AnswerProblem,
  answerProblems,
  firstPlan,
  formatFrostDates,
  problemsAtAnswers,
} from "../garden/index.ts";
import { coordinatesIn, type FirstAnswers, type Plan } from "../garden/model/index.ts";
import { checkPlan, readPlan } from "./check.ts";

export type { AnswerProblem } from "../garden/index.ts";
export type { FirstAnswers } from "../garden/model/index.ts";

/** A first plan as answers come to it: its text, the plan where nothing is wrong, and what is wrong or doubtful in the answers. */
export type FirstCheck = {
  readonly text: string;
  readonly plan: Plan | null;
  readonly problems: readonly AnswerProblem[];
  /** The plan's frost dates in words, a line a side. */
  readonly frosts: readonly string[];
};

/** What a first plan is checked for: its garden, the years it may be of (both inclusive), and whether its doubts are wanted, which cost a build. */
export type FirstCheckRequest = {
  readonly garden: string;
  readonly years: { readonly from: number; readonly to: number };
  /** The texts of files beside the plan. */
  readonly beside: Readonly<Record<string, string>>;
  readonly doubts: boolean;
};

/** The plan that answers come to, read by the very reader of all plans; an answer has its own fault, else the plan's at its place. */
export function checkFirstPlan(
  answers: FirstAnswers,
  { garden, years, beside, doubts }: FirstCheckRequest,
): FirstCheck {
  const text = firstPlan(answers);
  const file = { text, garden, file: "plan", beside };
  const { plan, problems } = doubts ? checkPlan(file, []) : readPlan(text, file);
  const own = answerProblems(answers, years);
  const faulty = new Set(own.map(({ field }) => field));
  const read = problemsAtAnswers(answers, text, sortProblems(problems));
  const all = [...own, ...read.filter(({ field }) => !faulty.has(field))];
  return { text, plan: own.length > 0 ? null : plan, problems: all, frosts: sayFrosts(plan) };
}

function sayFrosts(plan: Plan | null): readonly string[] {
  if (plan === null) return [];
  const { lastFrost, firstFrost } = plan.site;
  if (!lastFrost || !firstFrost) return ["No frost"];
  return [
    `Last frost: ${formatFrostDates(lastFrost)}`,
    `First frost: ${formatFrostDates(firstFrost)}`,
  ];
}

/** Frost dates as a plan says them: early, usual and late of each side, or `none`. */
export type FrostWords = { readonly lastFrost: string; readonly firstFrost: string };

/**
 * Frost dates guessed from the two temperatures that somebody knows; null where one of them is no temperature. `south` says on which
 * side of the equator, where the answers give no latitude.
 */
export function guessedFrosts(answers: FirstAnswers, south: boolean): FrostWords | null {
  const { clock, where, hottest, coldest } = answers;
  const measures = answers.measures === "metric" ? "metric" : "us";
  const [hot, cold] = [hottest, coldest].map((said) => temperatureFrom(said, measures));
  if (!hot || !cold || hot.si <= cold.si) return null;
  const latitude = coordinatesIn(where)?.latitude ?? null;
  const found = frostsByTemperatures({
    ...{ latitude, clock, hottestC: hot.si, coldestC: cold.si },
    south: latitude === null ? south : latitude < 0,
  });
  if (found === null) return { lastFrost: "none", firstFrost: "none" };
  return { lastFrost: threeDates(found.last), firstFrost: threeDates(found.first) };
}

function threeDates(day: number): string {
  // Any year will do that has no 29 February.
  const usual = plus(dayOrThrow(2027, 1, 1), day);
  return [-GUESSED_SPREAD_DAYS, 0, GUESSED_SPREAD_DAYS]
    .map((off) => sayDay(plus(usual, off)))
    .join(", ");
}
