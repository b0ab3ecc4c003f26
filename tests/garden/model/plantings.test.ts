import { describe, expect, it } from "vitest";
import { isRaised, plantingRanks } from "../../../src/garden/model/plantings.ts";
import { least, planOf } from "../plan/canonical.ts";

const crops = (...items: readonly string[]) =>
  least(`crops:\n${items.map((item) => `  - ${item}\n`).join("")}`);

describe("a planting", () => {
  it("is raised for plants that go out", () => {
    expect([isRaised("plants"), isRaised("seed indoors"), isRaised("tubers")]).toEqual([
      true,
      true,
      false,
    ]);
  });
});

describe("ranks of plantings", () => {
  it("are those that follow none of this plan's, then those that follow these, each in the plan's order", () => {
    const { plantings } = planOf(
      crops("beet: after carrot", "carrot", "spinach: after beet", "radish"),
    );
    const keys = plantingRanks(plantings).map((chain) => chain.map(({ crop }) => crop));
    expect(keys).toEqual([["carrot", "radish"], ["beet"], ["spinach"]]);
    expect(plantingRanks([])).toEqual([]);
  });
});
