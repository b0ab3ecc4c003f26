import { describe, expect, it } from "vitest";
import { APPLE, CHERRY, PEAR, PLUM, TREES } from "../../src/crops/trees.ts";

describe("fruit trees", () => {
  it("have a few jobs a year, and their first fruit after some years", () => {
    expect(TREES).toEqual([APPLE, PEAR, PLUM, CHERRY]);
    for (const { key, care, perennial } of TREES) {
      expect(care, key).toHaveLength(4);
      expect(perennial?.firstHarvestYear.value, key).toBeGreaterThanOrEqual(3);
    }
  });

  it("are pruned in winter, but stone fruit in summer", () => {
    const prune = [APPLE, PEAR, PLUM, CHERRY].map(
      ({ care }) => care.find(({ step }) => step === "prune")?.days.value[0] ?? 0,
    );
    expect(prune.map((days) => days > 0)).toEqual([false, false, true, true]);
  });

  it("are thinned where they set too much, and netted where birds come", () => {
    const steps = TREES.map(({ care }) => care.map(({ step }) => step).join(" "));
    expect(steps).toEqual([
      "prune feed thin fallen",
      "prune feed thin fallen",
      "feed thin prune fallen",
      "feed net prune fallen",
    ]);
  });
});
