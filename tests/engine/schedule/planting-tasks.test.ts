import { expect, test } from "vitest";
import { picksOf, tasksById, tasksBySubject } from "../../../src/engine/schedule/planting-tasks.ts";
import { QUARRY, tellOf } from "../../gardens.ts";

const { scheduled } = tellOf(QUARRY, { on: "2027-01-01" });
const tasks = tasksBySubject(scheduled);

test("every task stands under its subject, in the order of the schedule", () => {
  expect([...tasks.values()].flat()).toHaveLength(scheduled.length);
  const beet = scheduled.filter(({ task }) => task.subject.key === "2027/beet");
  expect(tasks.get("2027/beet")).toEqual(beet);
});

test("every task is found by its id, in a map made once for a list", () => {
  const byId = tasksById(scheduled);
  expect([...byId.values()]).toEqual(scheduled);
  expect(tasksById(scheduled)).toBe(byId);
  expect(tasksById([...scheduled])).not.toBe(byId);
});

test("the picks of a sowing are its own harvests and no other's", () => {
  const steps = (sowing: number) =>
    picksOf(tasks.get("2027/lettuce") ?? [], sowing).map(({ task }) => task.step);
  expect(steps(1)[0]).toBe("cut-1");
  expect(steps(2).every((step) => step.startsWith("sowing-2-"))).toBe(true);
  expect(steps(2).length).toBeGreaterThan(0);
  expect(steps(9)).toEqual([]);
});
