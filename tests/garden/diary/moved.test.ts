import { expect, test } from "vitest";
import { theDay } from "../../../src/base/days/day.ts";
import { asMoved } from "../../../src/garden/diary/moved.ts";
import { PLAN } from "../plan/canonical.ts";

const moved = (bed: string) =>
  asMoved(
    [PLAN],
    [{ kind: "moved", day: theDay(2027, 5, 20), planting: "2027/beet", bed, text: "" }],
  )[0]?.plantings.find(({ key }) => key === "2027/beet")?.bed;

test("a planting stands in the bed it was moved to", () => {
  expect(moved("south-bed")).toBe("south-bed");
});

test("a bed that its year has not moves nothing, nor does a diary without such a line", () => {
  expect(moved("moon")).toBe(PLAN.plantings.find(({ key }) => key === "2027/beet")?.bed);
  expect(asMoved([PLAN], [])).toEqual([PLAN]);
});
