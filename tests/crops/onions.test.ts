import { describe, expect, it } from "vitest";
import { GARLIC, ONION_FAMILY } from "../../src/crops/onions.ts";

describe("the onion family", () => {
  it("is of one family", () => {
    expect(ONION_FAMILY).toContain(GARLIC);
    for (const { family } of ONION_FAMILY) expect(family).toBe("onion family");
  });

  it("has garlic from cloves, planted one to two weeks after the killing frost", () => {
    expect(GARLIC.starts).toEqual(["cloves"]);
    expect(GARLIC.overwinter?.plantDaysAfterKillingFrost.value).toEqual([7, 14]);
  });

  it("mulches it later and lifts it the summer after, after its stalks are cut", () => {
    const { overwinter } = GARLIC;
    expect(overwinter?.mulchDaysAfterKillingFrost.value[0] ?? 0).toBeGreaterThan(14);
    expect(overwinter?.cutStalksDaysAfterLastFrost.value[1] ?? 99).toBeLessThan(
      overwinter?.harvestDaysAfterLastFrost.value[0] ?? 0,
    );
  });
});
