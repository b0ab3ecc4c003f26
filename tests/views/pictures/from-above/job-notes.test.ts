import { expect, test } from "vitest";
import { jobNotes } from "../../../../src/views/pictures/from-above/job-notes.ts";
import { isoDay, QUARRY } from "../../../gardens.ts";
import { sketchOf } from "../drawn.ts";

const { year } = sketchOf(QUARRY, "phone", "2027-06-20");
const told = (...tasks: readonly string[]) =>
  jobNotes(
    tasks.map((task, i) => ({ task, title: `Job ${i + 1}` })),
    { year, day: isoDay("2027-06-20") },
  );

test("jobs stand under the bed of their planting, which is marked, or under their bed", () => {
  const { beds, alone } = told(
    "2027/beet/thin/1",
    "2027/bed/root-bed/water/1",
    "2027/potato/hill/1",
  );
  expect(alone).toBe(true);
  expect(beds).toEqual([
    {
      bed: "root-bed",
      lines: ["Job 1.", "Job 2."],
      marks: [{ planting: "2027/beet", as: "do" }],
      freeCm: null,
    },
    {
      bed: "bags",
      lines: ["Job 3."],
      marks: [{ planting: "2027/potato", as: "do" }],
      freeCm: null,
    },
  ]);
});

test("a job of the whole garden stands nowhere", () => {
  expect(told("2027/garden/drain/1").beds).toEqual([]);
});
