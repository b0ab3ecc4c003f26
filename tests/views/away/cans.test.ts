import { describe, expect, test } from "vitest";
import type { AwayWaterNeed } from "../../../src/views/away/away-need.ts";
import { waterLines } from "../../../src/views/away/cans.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const US = planOf(QUARRY);
const METRIC = { ...US, measures: "metric" } as const;
const thirst = (
  bed: string | null,
  litresAWeek: number | null,
  runs: AwayWaterNeed["runs"] = null,
) => ({ kind: "water", bed, litresAWeek, runs }) as const;

describe("water for somebody with a can", () => {
  test("is told in cans, bags every other day and beds every third", () => {
    const lines = waterLines(
      [thirst("bags", 70), thirst("root-bed", 70), thirst("salad-bed", 30)],
      METRIC,
    );
    expect(lines.slice(0, 2)).toEqual([
      "Every other day, water: Bags 2 cans.",
      "Every third day, water: Root bed 3 cans; Salad bed 1 can.",
    ]);
  });

  test("is in the household's cans, and half a one at the least", () => {
    expect(waterLines([thirst("root-bed", 70)], US)).toEqual([
      "Every third day, water: Root bed 4 cans.",
      "A can is 2 gal; carry it half full. Pour slowly on the soil, not the leaves, evening or early morning.",
      "No water on a day after heavy rain.",
    ]);
    expect(waterLines([thirst("bags", 10)], METRIC)[0]).toBe(
      "Every other day, water: Bags half a can.",
    );
    expect(waterLines([thirst("bags", 10)], METRIC)[1]).toContain("A can is 10 L;");
  });

  test("names beds of the same need together", () => {
    const beds = [thirst("root-bed", 70), thirst("south-bed", 100), thirst("salad-bed", 70)];
    expect(waterLines(beds, METRIC)[0]).toBe(
      "Every third day, water: Root bed and Salad bed 3 cans each; South bed 4 cans.",
    );
  });

  test("goes by the soil where the need is not known, and names what stands in no bed", () => {
    expect(waterLines([thirst("root-bed", null), thirst(null, null)], US)[0]).toBe(
      "Every third day, water: Root bed and what stands in no bed till it is wet a finger deep.",
    );
  });

  test("comes from drip lines where there are some, and then wants no can", () => {
    const drip = thirst("root-bed", 100, { times: 2, minutes: 50 });
    const once = thirst("salad-bed", 30, { times: 1, minutes: 20 });
    expect(waterLines([drip, once], US)).toEqual([
      "Drip hose, open its tap, then shut it: Root bed 50 min, 2 times a week; Salad bed 20 min, once a week.",
      "No water on a day after heavy rain.",
    ]);
  });

  test("is not told where nothing is dry", () => {
    expect(waterLines([], US)).toEqual([]);
  });
});
