import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { whyLines } from "../../src/app/why.ts";
import { tellOf } from "../gardens.ts";
import { SPRING } from "./reports.ts";

test("a task's reasons come first, then those of what it hangs on", () => {
  const lines = whyLines(SPRING.year, "2027/beet/thin/1") ?? [];
  expect(lines[0]).toMatch(/^Thin beets, Root bed: .* 2027\/beet\/thin\/1$/);
  expect(lines[1]).toMatch(/^ {2}Between .* and .*, best /);
  expect(lines.some((line) => line.endsWith("2027/beet/sow-outdoors/1"))).toBe(true);
});

test("the end of an id is enough, and an unknown one gives none", () => {
  expect(whyLines(SPRING.year, "beet/thin/1")).toEqual(whyLines(SPRING.year, "2027/beet/thin/1"));
  expect(whyLines(SPRING.year, "beet/sing/1")).toBeNull();
});

test("what several reasons hang on is told once", () => {
  for (const { task } of SPRING.year.scheduled) {
    const heads = (whyLines(SPRING.year, task.id) ?? []).filter((line) => !line.startsWith(" "));
    expect(new Set(heads).size, task.id).toBe(heads.length);
  }
});

test("in a metric plan no degree is left in the sources' own", () => {
  const metric = readFileSync("tests/golden/gardens/maritime.yaml", "utf8");
  const { year } = tellOf(metric, { on: "2027-05-08" });
  const lines = year.scheduled.flatMap(({ task }) => whyLines(year, task.id) ?? []);
  expect(lines.filter((line) => line.includes("°F"))).toEqual([]);
  expect(lines.filter((line) => line.includes("°C")).length).toBeGreaterThan(20);
});
