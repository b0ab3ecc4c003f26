import { expect, test } from "vitest";
import { ANSWERS, isAnswer, UNDO } from "../../../src/garden/model/answers.ts";

test("an answer is one of a few words, alone or taken back", () => {
  for (const answer of ANSWERS) {
    expect(isAnswer(answer)).toBe(true);
    expect(isAnswer(`${UNDO}${answer}`)).toBe(true);
  }
});

test("anything else is none", () => {
  for (const text of ["", UNDO, "done today", "undo:done", `${UNDO}${UNDO}done`])
    expect(isAnswer(text), text).toBe(false);
});
