import { expect, test } from "vitest";
import { firstSentences, sentencesOf } from "../../../src/views/paper/brief.ts";

const SOW = "Sow ¼ in deep, 1 in apart. Water. Keep it damp every day.";

test("a text is cut between sentences, and its first always stands", () => {
  expect(firstSentences(SOW, 200)).toBe(SOW);
  expect(firstSentences(SOW, 40)).toBe("Sow ¼ in deep, 1 in apart. Water.");
  expect(firstSentences(SOW, 1)).toBe("Sow ¼ in deep, 1 in apart.");
  expect(firstSentences("", 40)).toBe("");
});

test("a point in a number ends no sentence", () => {
  expect(sentencesOf(SOW)).toEqual([
    "Sow ¼ in deep, 1 in apart.",
    "Water.",
    "Keep it damp every day.",
  ]);
});
