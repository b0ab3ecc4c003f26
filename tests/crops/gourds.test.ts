import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { isTender } from "../../src/crops/crops.ts";
import { CUCUMBER, GOURD_FAMILY, MELON, WATERMELON } from "../../src/crops/gourds.ts";

describe("the gourd family", () => {
  it("is of one family", () => {
    expect(GOURD_FAMILY).toEqual(expect.arrayContaining([CUCUMBER, MELON, WATERMELON]));
    expect(GOURD_FAMILY).toHaveLength(6);
    for (const { family } of GOURD_FAMILY) expect(family).toBe("gourd family");
  });

  it("has cucumbers that survive no cold, sown outdoors or raised a few weeks", () => {
    expect(isTender(CUCUMBER)).toBe(true);
    expect(CUCUMBER.starts).toEqual(["seed outdoors", "seed indoors", "plants"]);
    expect(CUCUMBER.indoors?.weeksToSettingOut.value).toEqual([2, 4]);
    expect(fahrenheit(CUCUMBER.outdoors?.soilMinC.value ?? 0)).toBeCloseTo(60, 9);
  });

  it("sets raised plants out a week after seed may be up, into the same soil", () => {
    expect(CUCUMBER.outdoors?.weeksFromLastFrost?.value).toBe(0);
    expect(CUCUMBER.settingOut?.weeksFromLastFrost.value).toBe(1);
    expect(CUCUMBER.settingOut?.soilMinC?.value).toBe(CUCUMBER.outdoors?.soilMinC.value);
  });

  it("picks them for weeks", () => {
    expect(CUCUMBER.harvest.kind).toBe("again and again");
    expect(CUCUMBER.harvest.bearsDays?.value[0] ?? 0).toBeGreaterThanOrEqual(28);
  });

  it("has melons and watermelons raised first, into soil warmer than cucumbers need", () => {
    const soil = (crop: typeof MELON) => crop.settingOut?.soilMinC?.value ?? 0;
    expect(MELON.starts[0]).toBe("seed indoors");
    expect(soil(MELON)).toBeGreaterThan(soil(CUCUMBER));
    expect(soil(WATERMELON)).toBeGreaterThan(soil(MELON));
  });

  it("distinguishes a ripe melon from a ripe watermelon", () => {
    expect(MELON.harvest.sign).toContain("smells sweet");
    expect(WATERMELON.harvest.sign).toContain("curl");
  });
});
