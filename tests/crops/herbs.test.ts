import { describe, expect, it } from "vitest";
import { HERBS, LAVENDER, LEMON_BALM, MINT, OREGANO, SAGE, THYME } from "../../src/crops/herbs.ts";

describe("herbs that stand for years", () => {
  it("are bought or raised, cut from their first summer, and trimmed every year", () => {
    expect(HERBS).toEqual([THYME, OREGANO, SAGE, MINT, LAVENDER, LEMON_BALM]);
    for (const { key, starts, perennial, care, frost } of HERBS) {
      expect(starts[0], key).toBe("plants");
      expect(perennial?.firstHarvestYear.value, key).toBe(1);
      expect(
        care.some(({ practice }) => practice === "yearly"),
        key,
      ).toBe(true);
      expect(frost.value, key).toBe("very hardy");
    }
  });

  it("keep mint's roots in", () => {
    expect(MINT.settingOut?.how).toContain("pot");
    expect(MINT.care.map(({ step }) => step)).toEqual(["trim", "roots"]);
  });
});
