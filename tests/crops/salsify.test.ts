import { describe, expect, it } from "vitest";
import { LONG_ROOTS, SALSIFY, SCORZONERA } from "../../src/crops/salsify.ts";

describe("long roots of the daisy family", () => {
  it("want a whole season, and stand the winter", () => {
    expect(LONG_ROOTS).toEqual([SALSIFY, SCORZONERA]);
    for (const { key, harvest, winter, slow } of LONG_ROOTS) {
      expect(harvest.days.value[0], key).toBeGreaterThan(100);
      expect(winter?.picked, key).toBe("through it");
      expect(slow, key).toBe(true);
    }
  });

  it("have a published class for salsify alone", () => {
    expect(SALSIFY.frost.source.kind).toBe("published");
    expect(SCORZONERA.frost.source.kind).toBe("common practice");
  });
});
