import { describe, expect, it } from "vitest";
import { cropOf } from "../../src/crops/crops.ts";
import { asCutAgain, canBeCutAgain } from "../../src/crops/cutting.ts";
import type { Crop } from "../../src/crops/facts.ts";

const crop = (key: string) => cropOf(key) as Crop;

describe("a crop cut young, to grow again", () => {
  it("is cut sooner, and more than once, where its leaves are what is eaten", () => {
    const whole = crop("head-lettuce");
    const cut = asCutAgain(whole);
    expect(cut.harvest.kind).toBe("cut and come again");
    expect(cut.harvest.cuts?.times.value).toEqual([2, 4]);
    expect(cut.harvest.days.value).toEqual([33, 48]);
    expect(cut.key).toBe(whole.key);
  });

  it("is what it was where it grows again anyway, or is grown for its roots or fruit", () => {
    for (const key of ["lettuce", "chard", "carrot", "pumpkin", "asparagus", "garlic"])
      expect(asCutAgain(crop(key)), key).toBe(crop(key));
    expect(canBeCutAgain(crop("carrot"))).toBe(false);
    expect(canBeCutAgain(crop("endive"))).toBe(true);
  });
});
