import { expect, test } from "vitest";
import { readPlanWithDoubts } from "../../src/app/read-plan.ts";
import { QUARRY } from "../gardens.ts";

const AT = { garden: "quarry-lane", file: "2027.yaml" };

test("a plan's own problems and what a grower doubts stand in reading order", () => {
  const text = QUARRY.replace("- tomato: 6 plants", "- moonflower\n      - tomato: 600 plants");
  const { plan, problems } = readPlanWithDoubts(text, AT);
  expect(plan).not.toBeNull();
  expect(problems.map(({ code }) => code)).toEqual([
    "greenhouse-too-full",
    "crop-unknown",
    "bed-too-full",
  ]);
});

test("nothing is doubted in a plan that has a problem", () => {
  const { plan, problems } = readPlanWithDoubts("garden: x", AT);
  expect(plan).toBeNull();
  expect(problems.every(({ weight }) => weight === "problem")).toBe(true);
});
