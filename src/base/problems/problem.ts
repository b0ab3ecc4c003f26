/** Where in a plan's text: line and column both count from 1. */
export type TextPosition = {
  readonly file: string;
  readonly line: number;
  readonly column: number;
};

/** A problem stops a plan from being used; a doubt is reported and the plan is used. */
export type Weight = "problem" | "doubt";

/**
 * Something wrong, or doubtful, in what a gardener wrote. `is` says what is there, `shouldBe` what would be right or
 * what to do; both are sentences without their full stop. `code` is stable, in kebab-case, and listed in plan/codes.ts.
 */
export type Problem = {
  readonly code: string;
  readonly weight: Weight;
  readonly at: TextPosition;
  readonly is: string;
  readonly shouldBe: string;
};

/**
 * One line for a person, as a question where another word is offered: `plans/x/2027.yaml:12:5: what is wrong. what
 * would be right.` Control characters are replaced.
 */
export function sayProblem(problem: Problem): string {
  const { file, line, column } = problem.at;
  const said = `${file}:${line}:${column}: ${sayAdvice(problem)}`;
  return said.replace(/\p{Cc}/gu, "\uFFFD");
}

/** What is wrong and what would be right, without the place: a question where another word is offered. */
export function sayAdvice({ is, shouldBe }: Problem): string {
  return `${is}. ${shouldBe}${shouldBe.startsWith("Did you mean") ? "?" : "."}`;
}

/** In the order a reader meets them: by line, column, then code. */
export function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  return [...problems].sort(
    (a, b) =>
      a.at.line - b.at.line ||
      a.at.column - b.at.column ||
      (a.code < b.code ? -1 : a.code > b.code ? 1 : 0),
  );
}
