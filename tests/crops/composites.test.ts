import { describe, expect, it } from "vitest";
import { COMPOSITES, JERUSALEM_ARTICHOKE, SUNFLOWER } from "../../src/crops/composites.ts";

describe("the daisy family's artichokes and flowers", () => {
  it("is of one family, two flowers among the vegetables", () => {
    for (const { family } of COMPOSITES) expect(family).toBe("daisy family");
    expect(COMPOSITES.map(({ key }) => key)).toEqual(
      expect.arrayContaining(["sunflower", "calendula"]),
    );
  });

  it("has a tuber that keeps in the ground, and sunflowers that want bees", () => {
    expect(JERUSALEM_ARTICHOKE.starts).toEqual(["tubers"]);
    expect(JERUSALEM_ARTICHOKE.harvest.holdsDays.value).toBeGreaterThan(30);
    expect(SUNFLOWER.flowers?.forBees).toBe(true);
  });
});
