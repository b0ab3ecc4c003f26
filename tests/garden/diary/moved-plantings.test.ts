import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { withMovedPlantings } from "../../../src/garden/diary/moved-plantings.ts";
import { PLAN } from "../plan/canonical.ts";

const moved = (bed: string) =>
  withMovedPlantings(
    [PLAN],
    [{ kind: "moved", day: dayOrThrow(2027, 5, 20), planting: "2027/beet", bed, text: "" }],
  )[0]?.plantings.find(({ key }) => key === "2027/beet")?.bed;

test("a planting stands in the bed it was moved to", () => {
  expect(moved("south-bed")).toBe("south-bed");
});

test("a bed that its year has not moves nothing, nor does a diary without such a line", () => {
  expect(moved("moon")).toBe(PLAN.plantings.find(({ key }) => key === "2027/beet")?.bed);
  expect(withMovedPlantings([PLAN], [])).toEqual([PLAN]);
});
