import { describe, expect, it } from "vitest";
import { ENDIVE, fromCells, HEAD_LETTUCE, SALADS } from "../../src/crops/salads.ts";
import { inch } from "./walk.ts";

describe("the salads of the daisy family", () => {
  it("is of one family, each with its room when it is set out", () => {
    for (const { family, settingOut } of SALADS) {
      expect(family).toBe("daisy family");
      expect(settingOut?.apartCm.value ?? 0).toBeGreaterThanOrEqual(inch(10));
    }
    expect(fromCells(8).apartCm.value).toBeCloseTo(inch(8), 9);
  });

  it("has head lettuce that heat ends, and endive that is tied up before it is cut", () => {
    expect(HEAD_LETTUCE.limits.heatC?.value).toBeCloseTo((70 - 32) / 1.8, 9);
    expect(ENDIVE.care[0]).toMatchObject({ practice: "fill in and blanch", from: "first harvest" });
  });
});
