import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { NIGHTSHADES, POTATO, TOMATO } from "../../src/crops/nightshades.ts";
import { EGGPLANT, PEPPER } from "../../src/crops/peppers.ts";
import { inch } from "./walk.ts";

describe("the nightshade family", () => {
  it("is of one family", () => {
    expect(NIGHTSHADES).toEqual(expect.arrayContaining([EGGPLANT, PEPPER, POTATO, TOMATO]));
    for (const { family } of NIGHTSHADES) expect(family).toBe("nightshade family");
  });

  it("has tomatoes that frost kills, raised indoors and set out in warm soil", () => {
    expect(TOMATO.frost.value).toBe("tender");
    expect(TOMATO.starts[0]).toBe("seed indoors");
    expect(fahrenheit(TOMATO.settingOut?.soilMinC?.value ?? 0)).toBeCloseTo(55, 6);
    expect(TOMATO.outdoors).toBeNull();
    expect(TOMATO.indoors?.hardenDays.value).toBe(10);
  });

  it("has potatoes from tubers, hilled when shoots stand six to eight inches", () => {
    expect(POTATO.starts).toEqual(["tubers"]);
    expect(POTATO.hilling?.shootCm.value).toEqual([inch(6), inch(8)]);
    expect(POTATO.hilling?.topsLeftCm.value[1] ?? 99).toBeLessThan(inch(6));
  });

  it("warns of green potatoes", () => {
    expect(POTATO.harvest.caution).toMatch(/green potatoes/i);
  });

  it("stops tomatoes before the first frost and stores potatoes dark and cool", () => {
    const stop = TOMATO.care.find(({ practice }) => practice === "stop the tops");
    expect(stop).toMatchObject({ from: "first frost" });
    expect(stop?.days.value[1]).toBeLessThan(0);
    const store = POTATO.care.find(({ practice }) => practice === "cure and store");
    expect(JSON.stringify(store?.how)).toContain("dark");
  });
});
