import { describe, expect, it } from "vitest";
import { BORAGE, COSMOS, FLOWERS, MARIGOLD, SWEET_PEA, ZINNIA } from "../../src/crops/flowers.ts";

describe("flowers among the vegetables", () => {
  it("are marigolds, which frost kills, and sweet peas, which stand some", () => {
    expect(FLOWERS).toEqual([MARIGOLD, ZINNIA, COSMOS, BORAGE, SWEET_PEA]);
    expect([MARIGOLD, SWEET_PEA].map(({ frost }) => frost.value)).toEqual([
      "tender",
      "frost tolerant",
    ]);
  });

  it("are picked over again and again, or they stop", () => {
    for (const { harvest } of FLOWERS) expect(harvest.kind).toBe("again and again");
    expect(SWEET_PEA.harvest.caution).toContain("sweet peas are poisonous");
  });

  it("have sweet peas climb, and pinched once", () => {
    expect(SWEET_PEA.support).not.toBeNull();
    expect(SWEET_PEA.care.map(({ verb }) => verb)).toEqual(["Pinch out"]);
  });
});
