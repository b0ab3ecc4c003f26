import { expect, it } from "vitest";
import { notOfABed } from "../../../src/garden/plan/bed-words.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";

it("what no bed can be is told at its place, with what would be right", () => {
  const problem = notOfABed(wordsAt("sunny", { file: "f", line: 3, column: 9 }));
  expect(problem).toMatchObject({ code: "unknown-word", at: { line: 3, column: 9 } });
  expect(problem.is).toBe("sunny is not understood of a bed");
  expect(problem.shouldBe).toContain("6 grow bags of 10 gal");
});

it("a misspelt word for a house is told with the word that was meant", () => {
  const problem = notOfABed(wordsAt("tunel", { file: "f", line: 3, column: 9 }));
  expect(problem.shouldBe).toBe("Did you mean tunnel");
});
