import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { TOMATO } from "../../src/crops/nightshades.ts";
import { EGGPLANT, PEPPER, PEPPERS } from "../../src/crops/peppers.ts";

describe("peppers and eggplants", () => {
  it("are nightshades", () => {
    expect(PEPPERS).toEqual([EGGPLANT, PEPPER]);
    for (const { family } of PEPPERS) expect(family).toBe("nightshade family");
  });

  it("raises peppers and eggplants longer than tomatoes, for warmer soil and later", () => {
    for (const crop of [PEPPER, EGGPLANT]) {
      expect(crop.frost.value).toBe("warm loving");
      expect(crop.indoors?.weeksToSettingOut.value[0]).toBeGreaterThan(
        TOMATO.indoors?.weeksToSettingOut.value[0] ?? 99,
      );
      expect(fahrenheit(crop.settingOut?.soilMinC?.value ?? 0)).toBeCloseTo(60, 6);
      expect(crop.settingOut?.weeksFromLastFrost.value).toBeGreaterThan(0);
    }
  });

  it("keeps fabric over eggplants until they flower", () => {
    expect(EGGPLANT.covers).toMatchObject([{ with: "fabric", on: "in place", off: "flower" }]);
    expect(EGGPLANT.flowers?.forBees).toBe(false);
  });

  it("are picked until frost, hot ones with gloves", () => {
    for (const { harvest } of PEPPERS)
      expect(harvest).toMatchObject({ kind: "again and again", bearsDays: null });
    expect(PEPPER.harvest.caution).toMatch(/gloves/);
  });
});
