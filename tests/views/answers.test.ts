import { expect, test } from "vitest";
import { ANSWERS } from "../../src/garden/model/answers.ts";
import { answersTo } from "../../src/views/answers.ts";
import { QUARRY, tellOf } from "../gardens.ts";

const { scheduled } = tellOf(QUARRY, { on: "2027-05-08" });
const wordsFor = (id: string) => {
  const found = scheduled.find(({ task }) => task.id === id);
  if (!found) throw new Error(`no task ${id}`);
  return answersTo(found.task).map(({ words }) => words);
};

test("each job is answered in its own words, and left where nothing hangs on it", () => {
  expect(wordsFor("2027/beet/thin/1")).toEqual([
    "Thinned today",
    "Not tall enough yet",
    "Leave it this year",
  ]);
  expect(wordsFor("2027/beet/sow-outdoors/1")).toEqual(["Sown today", "Too cold or wet yet"]);
});

test("under a board green can be seen", () => {
  expect(wordsFor("2027/carrot/board/off")[0]).toBe("I see green");
});

test("every answer is one the diary knows, and a warning takes none", () => {
  for (const { task } of scheduled) {
    const answers = answersTo(task);
    for (const { says } of answers) expect(ANSWERS).toContain(says);
    expect(answers.length === 0, task.id).toBe(task.rhythm === "warning");
  }
});
