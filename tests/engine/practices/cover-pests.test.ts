import { describe, expect, test } from "vitest";
import { CROPS } from "../../../src/crops/crops.ts";
import { howCovered, pestFactsIn } from "../../../src/engine/practices/cover-pests.ts";

const AGAINST = [...new Set(CROPS.flatMap(({ covers }) => covers.map(({ against }) => against)))];

describe("what a cover is against", () => {
  test("is told in one short sentence for each pest", () => {
    for (const pest of AGAINST) {
      const { keepsOff } = pestFactsIn("north america", pest);
      expect(keepsOff).toMatch(/^[A-Z].*\.$/);
      expect(keepsOff.length).toBeLessThan(80);
    }
  });

  test("winters in the soil, all but birds", () => {
    const outside = AGAINST.filter(
      (pest) => pestFactsIn("north america", pest).wintersAfter === null,
    );
    expect(outside).toEqual(["birds"]);
  });

  test("is butterflies and birds alone where root flies and leaf miners do not live", () => {
    expect(pestFactsIn("british isles", "cabbage pests").keepsOff).toContain("root flies");
    const away = pestFactsIn("australia", "cabbage pests");
    expect(away.keepsOff).not.toContain("root flies");
    expect(away.wintersAfter).toBeNull();
    expect(pestFactsIn("australia", "leaf miners")).toEqual(pestFactsIn("australia", "birds"));
  });

  test("is the wind where no striped beetles live", () => {
    expect(pestFactsIn("north america", "cucumber beetles").keepsOff).toContain("striped beetles");
    const away = pestFactsIn("british isles", "cucumber beetles");
    expect(away.keepsOff).not.toContain("beetle");
    expect(away.wintersAfter).toBeNull();
    expect(pestFactsIn("australia", "birds")).toEqual(pestFactsIn("elsewhere", "birds"));
  });
});

test("a cover is a net or fabric, on hoops, shut with soil where a gap lets pests in", () => {
  expect(howCovered("fabric", true)).toMatch(/^Fabric on hoops/);
  expect(howCovered("net", true)).toContain("Bury its edges");
  expect(howCovered("net", false)).toContain("pegged or weighed down");
});
