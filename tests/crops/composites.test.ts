import { describe, expect, it } from "vitest";
import {
  COMPOSITES,
  ENDIVE,
  HEAD_LETTUCE,
  JERUSALEM_ARTICHOKE,
  SUNFLOWER,
} from "../../src/crops/composites.ts";

describe("the daisy family beside leaf lettuce", () => {
  it("is of one family, two flowers among the vegetables", () => {
    for (const { family } of COMPOSITES) expect(family).toBe("daisy family");
    expect(COMPOSITES.map(({ key }) => key)).toEqual(
      expect.arrayContaining(["sunflower", "calendula"]),
    );
  });

  it("has head lettuce that heat ends, and endive that is tied up before it is cut", () => {
    expect(HEAD_LETTUCE.limits.heatC?.value).toBeCloseTo((70 - 32) / 1.8, 9);
    expect(ENDIVE.care[0]).toMatchObject({ practice: "fill in and blanch", from: "first harvest" });
  });

  it("has a tuber that keeps in the ground, and sunflowers that want bees", () => {
    expect(JERUSALEM_ARTICHOKE.starts).toEqual(["tubers"]);
    expect(JERUSALEM_ARTICHOKE.harvest.holdsDays.value).toBeGreaterThan(30);
    expect(SUNFLOWER.flowers?.forBees).toBe(true);
  });
});
