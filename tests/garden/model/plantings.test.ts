import { describe, expect, it } from "vitest";
import { bedOf, isRaised, plantingRanks } from "../../../src/garden/model/plantings.ts";
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

describe("the bed of a planting", () => {
  it("is under cloches where the planting has its own", () => {
    const plan = planOf(
      least("beds:\n  A:\n    crops:\n      - beet: under a net\n      - kale: under cloches"),
    );
    const [beet, kale] = plan.plantings;
    expect(beet && bedOf(plan, beet)).toBe(plan.beds[0]);
    expect(kale && bedOf(plan, kale)?.covers).toEqual(["cloche"]);
    expect(kale && bedOf(plan, kale)).toBe(kale && bedOf(plan, kale));
    expect(beet && bedOf(plan, { ...beet, bed: null })).toBeNull();
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
