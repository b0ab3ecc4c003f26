import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { BINDWEED_FAMILY, SWEET_POTATO } from "../../src/crops/bindweeds.ts";
import { cropNamed, isTender } from "../../src/crops/crops.ts";

describe("the bindweed family", () => {
  it("is the sweet potato, and no potato", () => {
    expect(BINDWEED_FAMILY).toEqual([SWEET_POTATO]);
    expect(SWEET_POTATO.family).toBe("bindweed family");
    expect(cropNamed("sweet potatoes")).toBe(SWEET_POTATO);
    expect(cropNamed("potatoes")).not.toBe(SWEET_POTATO);
  });

  it("begins as bought slips, two weeks after frost in soil of 60 °F", () => {
    expect(SWEET_POTATO.starts).toEqual(["plants"]);
    expect(isTender(SWEET_POTATO)).toBe(true);
    expect(SWEET_POTATO.settingOut?.weeksFromLastFrost.value).toBe(2);
    expect(fahrenheit(SWEET_POTATO.settingOut?.soilMinC?.value ?? 0)).toBeCloseTo(60, 9);
  });

  it("is dug once and cured in warmth the same day or the next", () => {
    expect(SWEET_POTATO.harvest).toMatchObject({ from: "setting out", kind: "once", verb: "Dig" });
    const cure = SWEET_POTATO.care.find(({ practice }) => practice === "cure and store");
    expect(cure?.days.value).toEqual([0, 1]);
    expect(cure?.caution).toMatch(/refrigerator/);
  });
});
