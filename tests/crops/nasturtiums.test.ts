import { describe, expect, it } from "vitest";
import { NASTURTIUM, NASTURTIUM_FAMILY } from "../../src/crops/nasturtiums.ts";

describe("the nasturtium family", () => {
  it("has one flower, that frost kills, soaked before it is sown", () => {
    expect(NASTURTIUM_FAMILY).toEqual([NASTURTIUM]);
    expect(NASTURTIUM.frost.value).toBe("tender");
    expect(NASTURTIUM.outdoors?.soakHours?.value).toEqual([8, 12]);
  });
});
