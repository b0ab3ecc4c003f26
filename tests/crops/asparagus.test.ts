import { describe, expect, it } from "vitest";
import { ASPARAGUS, ASPARAGUS_FAMILY } from "../../src/crops/asparagus.ts";

describe("the asparagus family", () => {
  it("has one crop, from crowns, that grows for years", () => {
    expect(ASPARAGUS_FAMILY).toEqual([ASPARAGUS]);
    expect(ASPARAGUS.starts).toEqual(["crowns"]);
    expect(ASPARAGUS.perennial?.standsYears.value[0]).toBeGreaterThanOrEqual(10);
  });

  it("is left alone until its third summer, then cut round the last frost for weeks", () => {
    expect(ASPARAGUS.perennial?.firstHarvestYear.value).toBe(3);
    expect(ASPARAGUS.perennial?.harvestDaysAfterLastFrost.value).toEqual([-10, 10]);
    expect(ASPARAGUS.perennial?.harvestWeeks.value).toEqual([6, 8]);
  });

  it("keeps its green fern until autumn", () => {
    expect(ASPARAGUS.care.find(({ step }) => step === "fern")?.from).toBe("first frost");
  });
});
