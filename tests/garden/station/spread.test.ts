import { describe, expect, test } from "vitest";
import { likelySpreadK, USUAL_SPREAD_K } from "../../../src/garden/station/spread.ts";

describe("the spread to go by", () => {
  test("is the usual one where only one year was seen", () => {
    expect(likelySpreadK(0, 1)).toBe(USUAL_SPREAD_K);
  });

  test("after three years is nearer to the usual one than to the years' own", () => {
    expect(likelySpreadK(0.2, 3)).toBeCloseTo(Math.sqrt((2 * 0.04 + 4 * 2.25) / 6), 12);
    expect(likelySpreadK(0.2, 3)).toBeGreaterThan(1.1);
    expect(likelySpreadK(4.4, 3)).toBeLessThan(3);
  });

  test("after thirty years is within an eighth of what was seen", () => {
    for (const seenK of [1, 2, 3]) {
      const ratio = likelySpreadK(seenK, 30) / seenK;
      expect(Math.abs(ratio - 1)).toBeLessThan(1 / 8);
    }
  });

  test("of the usual size stays as it is, however many years", () => {
    for (const years of [1, 3, 10, 30])
      expect(likelySpreadK(USUAL_SPREAD_K, years)).toBeCloseTo(USUAL_SPREAD_K, 12);
  });
});
