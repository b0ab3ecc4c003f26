import { expect, test } from "vitest";
import { planOfTask, yearBefore } from "../../../src/engine/schedule/year-of.ts";
import { planOf, QUARRY } from "../../gardens.ts";

test("a task is told by the plan of its own year, an unknown year's by the newest", () => {
  const plans = [planOf(QUARRY), planOf(QUARRY, { year: 2028 })];
  expect(planOfTask("2027/beet/thin/1", plans).year).toBe(2027);
  expect(planOfTask("1999/beet/thin/1", plans).year).toBe(2028);
  expect(() => planOfTask("2027/beet/thin/1", [])).toThrow(RangeError);
});

test("the same job of the year before has the same id but for its year", () => {
  expect(yearBefore("2027/beet/thin/1")).toBe("2026/beet/thin/1");
});
