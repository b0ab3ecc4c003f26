import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { withChangedPlantings } from "../../../src/garden/diary/changed-plantings.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { PLAN } from "../plan/canonical.ts";

const day = dayOrThrow(2027, 5, 20);
const plantingAfter = (planting: string, ...observations: readonly Observation[]) =>
  withChangedPlantings([PLAN], observations)[0]?.plantings.find(({ key }) => key === planting);
const moved = (bed: string): Observation => ({
  kind: "moved",
  day,
  planting: "2027/beet",
  bed,
  text: "",
});
const bought = (planting: string): Observation => ({ kind: "bought", day, planting, text: "" });

test("a planting stands in the bed it was last moved to", () => {
  expect(plantingAfter("2027/beet", moved("bags"), moved("south-bed"))?.bed).toBe("south-bed");
});

test("a bed that its year has not moves nothing, nor does a diary without such a line", () => {
  const bed = PLAN.plantings.find(({ key }) => key === "2027/beet")?.bed;
  expect(plantingAfter("2027/beet", moved("moon"))?.bed).toBe(bed);
  expect(withChangedPlantings([PLAN], [])).toEqual([PLAN]);
});

test("what was bought begins from plants, no sooner than that day nor than the plan says", () => {
  expect(plantingAfter("2027/tomato", bought("2027/tomato"))).toMatchObject({
    start: "plants",
    notBefore: dayOrThrow(2027, 6, 8),
  });
  expect(plantingAfter("2027/lettuce", bought("2027/lettuce"))).toMatchObject({
    start: "plants",
    notBefore: day,
  });
});

test("a crop that is never set out stays as it is begun", () => {
  expect(plantingAfter("2027/carrot", bought("2027/carrot"))?.start).toBe("seed outdoors");
});
