import { describe, expect, it } from "vitest";
import { LEEK, LEEKS, SCALLION } from "../../src/crops/leeks.ts";

describe("the onion family's stems and greens", () => {
  it("is of one family, from slow seed", () => {
    expect(LEEKS).toEqual([SCALLION, LEEK]);
    for (const { family, slow } of LEEKS) {
      expect(family).toBe("onion family");
      expect(slow).toBe(true);
    }
  });

  it("has leeks that get soil drawn up twice, the second time later", () => {
    const blanched = LEEK.care.filter(({ practice }) => practice === "fill in and blanch");
    expect(blanched.map(({ step }) => step)).toEqual(["1", "2"]);
    expect(blanched[1]?.days.value[0] ?? 0).toBeGreaterThan(blanched[0]?.days.value[1] ?? 99);
  });
});
