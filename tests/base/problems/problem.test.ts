import { describe, expect, it } from "vitest";
import { type Problem, sayProblem, sortProblems } from "../../../src/base/problems/problem.ts";

const problem = (code: string, line: number, column: number): Problem => ({
  code,
  weight: "problem",
  at: { file: "plans/x/2027.yaml", line, column },
  is: "rwos is not understood",
  shouldBe: "Did you mean rows",
});

describe("problems", () => {
  it("are written with file, line and column, what is wrong and what would be right", () => {
    expect(sayProblem(problem("a", 12, 5))).toBe(
      "plans/x/2027.yaml:12:5: rwos is not understood. Did you mean rows?",
    );
  });

  it("are written on one line, without control characters", () => {
    const odd = { ...problem("a", 1, 1), is: "a\u001b[31m\nb is not understood" };
    expect(sayProblem(odd)).toContain(": a\uFFFD[31m\uFFFDb is not understood.");
  });

  it("are in the order of reading, then of their codes", () => {
    const mixed = [problem("b", 2, 1), problem("a", 2, 1), problem("c", 1, 9), problem("d", 2, 0)];
    expect(sortProblems(mixed).map(({ code }) => code)).toEqual(["c", "d", "a", "b"]);
    expect(sortProblems([])).toEqual([]);
  });

  it("are put in order without touching the list given", () => {
    const mixed = Object.freeze([problem("b", 2, 1), problem("a", 1, 1)]);
    expect(sortProblems(mixed)).not.toBe(mixed);
  });
});
