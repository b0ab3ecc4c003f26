import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { reportDiary } from "../../../src/views/events/diary.ts";
import { QUARRY } from "../../gardens.ts";

const DIARY = `diary:
  - 24 May: carrots up
  - 25 May: carrots not up yet
  - 26 May: a fox came by
  - 9 Sep: beets thinned
`;

test("each line is told with what was understood, what no longer holds and what is still to come", () => {
  const { plan } = readPlan(`${QUARRY}${DIARY}`, { garden: "g", file: "2027.yaml" }, PRACTICES);
  const told = reportDiary(plan ? [plan] : [], dayOrThrow(2027, 6, 1));
  expect(told.map(({ line }) => line.text)).toEqual([
    "carrots up",
    "carrots not up yet",
    "a fox came by",
    "beets thinned",
  ]);
  const [up, , fox, beets] = told.map(({ observations: understood }) => understood);
  expect(up?.[0]).toMatchObject({ text: expect.stringMatching(/^Carrot is up$/) });
  expect(up?.[0]?.remarks[0]).toMatch(/no longer holds/);
  expect(fox).toEqual([{ text: "Kept as a note", remarks: [] }]);
  expect(beets?.[0]?.remarks).toContain("its day is still to come");
});

test("work on a bed and on the garden is told by their names", () => {
  const lines = "diary:\n  - 20 May: weeded the root bed\n  - 21 May: watered\n";
  const { plan } = readPlan(`${QUARRY}${lines}`, { garden: "g", file: "2027.yaml" }, PRACTICES);
  const told = reportDiary(plan ? [plan] : [], dayOrThrow(2027, 6, 1));
  expect(told.flatMap(({ observations }) => observations.map(({ text }) => text))).toEqual([
    "Root bed is weeded",
    "The garden is watered",
  ]);
});

test("an answer to a job of what was renamed says so, and what it probably is now", () => {
  const { plan } = readPlan(QUARRY, { garden: "g", file: "2027.yaml" }, PRACTICES);
  const day = dayOrThrow(2027, 5, 20);
  const at = { file: "diary", line: 1, column: 1 };
  const answers = { task: "2027/early-beets/thin/1", by: null };
  const tapped = plan ? [{ ...plan, diary: [{ day, text: "done", at, answers }] }] : [];
  const [line] = reportDiary(tapped, dayOrThrow(2027, 6, 1));
  expect(line?.observations[0]?.remarks[0]).toMatch(
    /no planting is called early beets any more.*was:/,
  );
});

test("what a line says of another day than its own is told with that day", () => {
  const lines = "diary:\n  - 20 May: Tues - beets thinned\n";
  const { plan } = readPlan(`${QUARRY}${lines}`, { garden: "g", file: "2027.yaml" }, PRACTICES);
  const [line] = reportDiary(plan ? [plan] : [], dayOrThrow(2027, 6, 1));
  expect(line?.observations[0]?.text).toBe("Beet is thinned, on 18 May");
});
