import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { observationOfAnswer } from "../../../src/garden/diary/answers.ts";
import { ANSWERS, isAnswer } from "../../../src/garden/model/answers.ts";

const DAY = dayOrThrow(2027, 6, 6);
const fact = (text: string, task = "2027/beet/thin/1") =>
  observationOfAnswer(
    {
      day: DAY,
      text,
      at: { file: "diary", line: 1, column: 1 },
      answers: { task, by: "oda" },
    },
    PRACTICES,
  );

describe("an answer to a task", () => {
  test("is of that very task", () => {
    const of = { planting: "2027/beet", practice: "thin", step: "1", task: "2027/beet/thin/1" };
    expect(fact("done")).toEqual({ kind: "done", day: DAY, by: "oda", ...of });
    expect(fact("not yet")).toMatchObject({ kind: "not yet", of: { task: "2027/beet/thin/1" } });
    expect(fact("left this year")).toMatchObject({ kind: "left", practice: "thin" });
    expect(fact("undo: done")).toMatchObject({ kind: "undone", what: { kind: "done", ...of } });
  });

  test("of green under a board is the sowing seen up", () => {
    expect(fact("up", "2027/carrot/board/off")).toEqual({
      kind: "seen",
      day: DAY,
      planting: "2027/carrot",
      stage: "up",
      sowing: 1,
    });
    expect(fact("up", "2027/lettuce/board/sowing-2-off")).toMatchObject({ sowing: 2 });
  });

  test("can be of a bed or the garden", () => {
    expect(fact("done", "2027/bed/root-bed/weed/1")).toMatchObject({
      planting: "2027/bed/root-bed",
      practice: "weed",
    });
    expect(fact("done", "2027/garden/water/week-20")).toMatchObject({ practice: "water" });
  });

  test("is a note where it is none, or of no task", () => {
    expect(fact("sing").kind).toBe("note");
    expect(fact("done", "nonsense").kind).toBe("note");
    expect(fact("done", "2027/beet/dance/1").kind).toBe("note");
    expect(fact("undo: not yet").kind).toBe("note");
    expect([...ANSWERS, "undo: done"].every(isAnswer)).toBe(true);
    expect(isAnswer("undo: undo: done")).toBe(false);
  });
});
