import { expect, test } from "vitest";
import { hardeningSteps } from "../../../src/engine/beds/hardening-steps.ts";
import { tasksBySubject } from "../../../src/engine/schedule/planting-tasks.ts";
import { ALONE, tellOf } from "../../gardens.ts";

const stepsIn = (text: string, planting: string) => {
  const { scheduled } = tellOf(text, { on: "2027-01-01" });
  return hardeningSteps(tasksBySubject(scheduled).get(planting) ?? []);
};

test("tender plants are carried out day by day, the last times overnight, and stay out from no step on", () => {
  const steps = [...stepsIn(ALONE, "2027/tomato")].sort((a, b) => a.day - b.day);
  expect(steps.length).toBeGreaterThan(5);
  expect(steps[0]?.out).toBe("out by day");
  expect(steps.at(-1)?.out).toBe("out overnight");
  expect(steps.some(({ stays }) => stays)).toBe(false);
});

test("hardy plants stay out from two steps on, by day and then overnight", () => {
  const cabbage = ALONE.replace("beet: 2 rows", "cabbage: 4 plants, from seed indoors");
  expect(stepsIn(cabbage, "2027/cabbage")).toMatchObject([
    { out: "out by day", stays: true },
    { out: "out overnight", stays: true },
  ]);
});

test("what is sown in its place has none", () => {
  expect(stepsIn(ALONE, "2027/beet")).toEqual([]);
});
