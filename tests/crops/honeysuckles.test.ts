import { describe, expect, it } from "vitest";
import { CORN_SALAD, HONEYSUCKLE_FAMILY } from "../../src/crops/honeysuckles.ts";

describe("the honeysuckle family", () => {
  it("has corn salad, which survives hard frost and needs no heat", () => {
    expect(HONEYSUCKLE_FAMILY).toEqual([CORN_SALAD]);
    expect(CORN_SALAD.frost.value).toBe("very hardy");
    expect(CORN_SALAD.limits.heatC).not.toBeNull();
    expect(CORN_SALAD.slow).toBe(true);
  });
});
