import { describe, expect, test } from "vitest";
import {
  checkPlan,
  doubtsOfBeds,
  type PlanText,
  readGarden,
  reportPlan,
} from "../../src/app/check.ts";
import { dayOrThrow } from "../../src/base/days/day.ts";
import { bedOf } from "../engine/beds/gardens.ts";
import { gardenOf, planOf, QUARRY } from "../gardens.ts";

const file = (year: number, text: string): PlanText => ({
  garden: "quarry-lane",
  file: `plans/quarry-lane/${year}.yaml`,
  text,
});
const BEFORE = bedOf(["cabbage: 6 plants", "tomato: 4 plants"], { year: 2026, is: "4 x 4 ft" });
const NOW = bedOf(["cabbage: 6 plants, under a net", "tomato: 4 plants", "broccoli: 8 plants"], {
  is: "4 x 4 ft",
});
const FILES = [file(2026, BEFORE), file(2027, NOW)];

describe("all years of a garden", () => {
  test("are a garden where none has a problem, with every doubt by file and line", () => {
    const { garden, plans, problems } = readGarden(FILES);
    expect(garden?.plans).toEqual(plans);
    expect(problems.map(({ code }) => code)).toContain("family-too-soon");
  });

  test("are none with a problem in any, and the rest is read all the same", () => {
    const { garden, plans, problems } = readGarden([file(2026, "year: 2026\n"), file(2027, NOW)]);
    expect(garden).toBeNull();
    expect(plans.map(({ year }) => year)).toEqual([2027]);
    expect(problems.some(({ weight }) => weight === "problem")).toBe(true);
  });
});

describe("one text among the other years", () => {
  test("is told just what all files together tell of it", () => {
    const { garden, problems } = readGarden(FILES);
    if (!garden) throw new Error("no garden");
    const all = [...problems, ...doubtsOfBeds(garden)].filter(({ at }) =>
      at.file.endsWith("2027.yaml"),
    );
    const one = checkPlan(file(2027, NOW), [planOf(BEFORE)]);
    expect(new Set(one.problems)).toEqual(new Set(all));
    expect(one.problems.map(({ code }) => code)).toContain("family-too-soon");
    expect(one.problems.map(({ code }) => code)).toContain("bed-crowded");
  });

  test("stands in place of its own year's plan", () => {
    const codes = checkPlan(file(2027, NOW), [planOf(BEFORE), planOf(NOW)]).problems.map(
      ({ code }) => code,
    );
    expect(codes).not.toContain("key-clash");
  });

  test("has its problems and doubts in reading order", () => {
    const text = QUARRY.replace("- tomato: 6 plants", "- moonflower\n      - tomato: 600 plants");
    const { plan, problems } = checkPlan(file(2027, text), []);
    expect(plan).not.toBeNull();
    expect(problems.map(({ code }) => code)).toEqual([
      "greenhouse-too-full",
      "crop-unknown",
      "bed-too-full",
    ]);
  });

  test("is told of answers to what it no longer names", () => {
    const at = { file: "diary", line: 1, column: 1 };
    const answers = { task: "2027/early-beets/thin/1", by: null };
    const answered = [{ day: dayOrThrow(2027, 5, 20), text: "done", at, answers }];
    const { problems } = checkPlan(file(2027, QUARRY), [], answered);
    const beet = QUARRY.split("\n").findIndex((line) => line.includes("- beet")) + 1;
    expect(problems.filter(({ code }) => code === "answers-orphaned")).toMatchObject([
      { at: { line: beet }, shouldBe: "If beet is the same, add was: early beets to it" },
    ]);
  });

  test("has no plan while it has a problem", () => {
    expect(checkPlan(file(2027, "year: 2027\n"), [planOf(BEFORE)]).plan).toBeNull();
  });
});

test("a report counts what a plan has, and lists what was filled in and what its diary says in vain", () => {
  const text = `${QUARRY}diary:\n  - 1 May: a cat slept in the onions\n  - 12 May: carrots up\n  - 13 May: carrots not up\n`;
  const report = reportPlan(planOf(text), gardenOf(text));
  expect(report).toMatchObject({ plantings: 6, beds: 5, file: "plans/quarry-lane/2027.yaml" });
  expect(report.filled.length).toBeGreaterThan(0);
  expect(report.notes).toEqual(["1 May: a cat slept in the onions"]);
  expect(report.corrected).toEqual(["12 May: carrots up (no longer holds: 13 May says otherwise)"]);
});
