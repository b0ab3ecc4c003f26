import { expect, test } from "vitest";
import { detailsOf, joinHalves, outlineOf } from "../../../src/host/store/task-halves.ts";
import { QUARRY, tellOf } from "../../gardens.ts";

const { scheduled } = tellOf(QUARRY, { on: "2027-05-25" });

test("two halves of a task make it whole again, and nothing of it stands in both", () => {
  for (const each of scheduled) {
    const [outline, details] = [outlineOf(each), detailsOf(each)];
    expect(joinHalves(outline, details)).toEqual(each);
    const fields = [outline, details].flatMap((half) => [
      ...Object.keys(half).filter((field) => field !== "task"),
      ...Object.keys(half.task).map((field) => `task.${field}`),
    ]);
    expect(fields.length).toBe(Object.keys(each).length - 1 + Object.keys(each.task).length);
    expect(new Set(fields).size).toBe(fields.length);
  }
});

test("the outlines are less than half of all", () => {
  const sizeOf = (value: unknown) => JSON.stringify(value).length;
  expect(sizeOf(scheduled.map(outlineOf))).toBeLessThan(sizeOf(scheduled) / 2);
});
