import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { ending, planWith, wordsOf } from "./garden.ts";

const CROPS = ["lettuce: 2 rows", "tomato: 3 plants"];
const told = (text: string) => tellOf(text, { on: "2027-01-01" }).scheduled;

describe("a garden whose summer is a pause", () => {
  const mild = told(withCrops("mediterranean", CROPS));

  test("makes its beds ready once more before the second season", () => {
    const beds = ending(mild, "/ready-the-garden/beds-again");
    const sown = ending(mild, "/lettuce/sow-outdoors/1").day;
    expect(sown - beds.task.window.due).toBeGreaterThanOrEqual(8);
    expect(wordsOf(beds)).toContain("Clear what is over, soak dry soil");
  });

  test("mulches as the heat comes", () => {
    const mulch = ending(mild, "/ready-the-garden/mulch");
    expect(isoOf(mulch.task.window.due)).toMatch(/^2027-05-/);
    expect(wordsOf(mulch)).toContain("lay straw or dry leaves");
  });
});

test("a garden with a cool summer is told of neither", () => {
  const steps = told(planWith(CROPS)).map(({ task }) => task.step);
  expect(steps).not.toContain("mulch");
  expect(steps).not.toContain("beds-again");
});
