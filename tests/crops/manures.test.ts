import { describe, expect, it } from "vitest";
import { BUCKWHEAT, GREEN_MANURES, MANURE_MUSTARD, RYE } from "../../src/crops/manures.ts";

describe("green manures", () => {
  it("are cut down before they set seed, and the bed rests two to three weeks", () => {
    expect(GREEN_MANURES).toHaveLength(5);
    for (const { key, harvest, digInDays } of GREEN_MANURES) {
      expect(harvest.verb, key).toBe("Cut down");
      expect(harvest.kind, key).toBe("once");
      expect(digInDays?.value, key).toEqual([14, 21]);
    }
  });

  it("count in the rotation of their own families", () => {
    expect(MANURE_MUSTARD.family).toBe("cabbage family");
    expect(new Set(GREEN_MANURES.map(({ family }) => family)).size).toBe(5);
  });

  it("are for a summer gap or for the winter", () => {
    expect(BUCKWHEAT.frost.value).toBe("tender");
    expect(RYE.warmth).toBeNull();
    expect(RYE.harvest.days.value[0]).toBeGreaterThan(180);
  });
});
