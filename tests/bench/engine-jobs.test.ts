import { expect, test } from "vitest";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { firstRebuildJob, rebuildJob } from "./engine-jobs.ts";
import { gardenText } from "./garden.ts";

test.each([60, 500])("a garden of %i plantings is read, and has so many", (plantings) => {
  const source = { garden: "bench", file: "plans/bench/2027.yaml", beside: {} };
  const { plan, problems } = readPlan(gardenText({ year: 2027, plantings }), source, PRACTICES);
  expect(problems.filter(({ weight }) => weight === "problem")).toEqual([]);
  expect(plan?.plantings).toHaveLength(plantings);
});

test("a rebuild in which nothing changes stores the same calendar as the first, of some dozens of events", () => {
  const first = firstRebuildJob(12)();
  expect(rebuildJob(12)().fingerprint).toBe(first.fingerprint);
  expect(JSON.parse(first.events).length).toBeGreaterThan(50);
});
