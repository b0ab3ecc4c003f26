import { describe, expect, test } from "vitest";
import { orphanDoubts, orphansIn, sayOrphan } from "../../../src/garden/diary/orphans.ts";
import { on, PLAN } from "../plan/canonical.ts";

const answer = (task: string) => ({
  day: on(5, 9),
  text: "done",
  at: { file: "diary", line: 1, column: 1 },
  answers: { task, by: null },
});
const orphans = (...tasks: readonly string[]) =>
  orphansIn(tasks.map(answer), [PLAN]).map(
    ({ key, answers, probably }) => `${key} ${answers} ${probably?.name ?? null}`,
  );

describe("answers to what the plan no longer names", () => {
  test("are of the planting that nearly has the name, or alone is of its crop", () => {
    expect(orphans("2027/beets/thin/1")).toEqual(["2027/beets 1 beet"]);
    expect(orphans("2027/early-beets/thin/1", "2027/early-beets/sow-outdoors/1")).toEqual([
      "2027/early-beets 2 beet",
    ]);
    expect(orphans("2027/moonflower/thin/1")).toEqual(["2027/moonflower 1 null"]);
  });

  test("are of the bed that nearly has the name", () => {
    expect(orphans("2027/bed/roots-bed/weed/1")).toEqual(["2027/bed/roots-bed 1 Root bed"]);
  });

  test("are not of a planting that has answers of its own", () => {
    expect(orphans("2027/early-beets/thin/1", "2027/beet/thin/1")).toEqual([
      "2027/early-beets 1 null",
    ]);
  });

  test("are none of the garden, of what is there, or of years without a plan", () => {
    expect(
      orphans("2027/garden/water/week-20", "2027/beet/thin/1", "2027/bed/root-bed/weed/1"),
    ).toEqual([]);
    expect(orphans("2020/beets/thin/1", "no task")).toEqual([]);
  });
});

test("the doubt stands where the planting does, and says what to add", () => {
  const [doubt] = orphanDoubts([answer("2027/early-beets/thin/1")], [PLAN]);
  const beet = PLAN.plantings.find(({ key }) => key === "2027/beet");
  expect(doubt).toMatchObject({
    code: "answers-orphaned",
    at: beet?.at,
    is: "An answer to jobs of early beets moves nothing, since nothing is called so any more",
    shouldBe: "If beet is the same, add was: early beets to it",
  });
  expect(orphanDoubts([answer("2027/moonflower/thin/1")], [PLAN])).toEqual([]);
});

test("the page says the same beside the line", () => {
  const [orphan] = orphansIn([answer("2027/early-beets/thin/1")], [PLAN]);
  expect(orphan && sayOrphan(orphan)).toBe(
    "no planting is called early beets any more, so it moves nothing; it is probably beet now: add was: early beets to it",
  );
});
