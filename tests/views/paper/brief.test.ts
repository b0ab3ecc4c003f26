import { expect, test } from "vitest";
import { brief, sentencesOf } from "../../../src/views/paper/brief.ts";

const SOW = "Sow 0.25 in deep, 1 in apart. Water. Keep it damp every day.";

test("a text is cut between sentences, and its first always stands", () => {
  expect(brief(SOW, 200)).toBe(SOW);
  expect(brief(SOW, 40)).toBe("Sow 0.25 in deep, 1 in apart. Water.");
  expect(brief(SOW, 1)).toBe("Sow 0.25 in deep, 1 in apart.");
  expect(brief("", 40)).toBe("");
});

test("a point in a number ends no sentence", () => {
  expect(sentencesOf(SOW)).toEqual([
    "Sow 0.25 in deep, 1 in apart.",
    "Water.",
    "Keep it damp every day.",
  ]);
});
