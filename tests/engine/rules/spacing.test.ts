import { describe, expect, it } from "vitest";
import { cropOf } from "../../../src/crops/crops.ts";
import { bedShare } from "../../../src/engine/rules/spacing.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";

describe("the share of a bed that a planting takes", () => {
  const share = (is: string, crop: string) => {
    const plan = planOf(least(`beds:\n  A:\n    is: ${is}\n    crops:\n      - ${crop}`));
    const [planting, room] = [plan.plantings[0], plan.beds[0]];
    const facts = planting && cropOf(planting.crop);
    return planting && room && facts ? bedShare(planting, facts, room) : "no crop";
  };

  it("grows with rows, plants and length, and is whole where the bed is full", () => {
    expect(share("12 x 4 ft", "carrot: 12 rows")).toBeCloseTo(1, 5);
    expect(share("12 x 4 ft", "carrot: 6 rows")).toBeCloseTo(0.5, 5);
    expect(share("12 x 4 ft", "carrot: 36 ft")).toBeCloseTo(0.25, 5);
    expect(share("8 x 4 ft", "garlic: 64 cloves")).toBeCloseTo(0.5, 2);
    expect(share("6 grow bags, 16 in across, 14 in high", "potato: 12 plants")).toBeCloseTo(0.5, 5);
  });

  it("is not known without a size or an amount, nor for rows in bags", () => {
    expect(share("greenhouse", "tomato: 5 plants")).toBeNull();
    expect(share("12 x 4 ft", "carrot")).toBeNull();
    expect(share("6 grow bags, 16 in across, 14 in high", "carrot: 2 rows")).toBeNull();
  });
});
