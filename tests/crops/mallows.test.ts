import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { MALLOW_FAMILY, OKRA } from "../../src/crops/mallows.ts";
import { inch } from "./walk.ts";

describe("the mallow family", () => {
  it("is okra, which survives no cold", () => {
    expect(MALLOW_FAMILY).toEqual([OKRA]);
    expect([OKRA.family, OKRA.frost.value]).toEqual(["mallow family", "warm loving"]);
  });

  it("is soaked and sown close into soil of 65 °F, then thinned to a foot", () => {
    expect(OKRA.outdoors?.soakHours?.value).toEqual([12, 24]);
    expect(fahrenheit(OKRA.outdoors?.soilMinC.value ?? 0)).toBeCloseTo(65, 9);
    expect(OKRA.thinnings[0]?.apartCm.value).toEqual([inch(12), inch(12)]);
  });

  it("is cut until frost, with gloves", () => {
    expect(OKRA.harvest).toMatchObject({ kind: "again and again", bearsDays: null, verb: "Cut" });
    expect(OKRA.harvest.caution).toMatch(/gloves/);
  });
});
