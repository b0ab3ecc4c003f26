import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { isTender } from "../../src/crops/crops.ts";
import { CORN, GRASS_FAMILY, POPCORN } from "../../src/crops/grasses.ts";

describe("the grass family", () => {
  it("is of one family", () => {
    expect(GRASS_FAMILY).toEqual([CORN, POPCORN]);
    for (const { family } of GRASS_FAMILY) expect(family).toBe("grass family");
  });

  it("has tender sweet corn, sown at its distance into soil of 55 °F", () => {
    expect(isTender(CORN)).toBe(true);
    expect(CORN.thinnings).toEqual([]);
    expect(fahrenheit(CORN.outdoors?.soilMinC.value ?? 0)).toBeCloseTo(55, 9);
  });

  it("counts its warmth between Peet's 50 and Wisconsin's 86 °F", () => {
    expect(fahrenheit(CORN.warmth?.baseC.value ?? 0)).toBeCloseTo(50, 9);
    expect(fahrenheit(CORN.warmth?.ceilingC?.value ?? 0)).toBeCloseTo(86, 9);
  });

  it("has days that are Peet's 1,750 and 1,890 degree days at the packet's warmth", () => {
    const aDay = fahrenheit(CORN.warmth?.packetC.value ?? 0) - 50;
    expect(CORN.harvest.days.value[0]).toBe(Math.floor(1750 / aDay + 1e-9));
    expect(CORN.harvest.days.value[1]).toBe(Math.ceil(1890 / aDay - 1e-9));
    expect(CORN.harvest.kind).toBe("once");
  });

  it("is sown in a block, without support, and fed at knee height", () => {
    expect(CORN.outdoors?.how).toMatch(/block/);
    expect(CORN.support).toBeNull();
    expect(CORN.care.find(({ practice }) => practice === "feed")?.sign).toMatch(/knee/);
  });
});
