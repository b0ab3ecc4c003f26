import { describe, expect, it } from "vitest";
import { CRESS, KOMATSUNA, QUICK_GREENS, RAPINI } from "../../src/crops/quick-greens.ts";

describe("quick greens", () => {
  it("are sown in their place and cut within two months", () => {
    expect(QUICK_GREENS).toEqual([RAPINI, KOMATSUNA, CRESS]);
    for (const { key, family, starts, harvest } of QUICK_GREENS) {
      expect(family, key).toBe("cabbage family");
      expect(starts, key).toEqual(["seed outdoors"]);
      expect(harvest.days.value[1], key).toBeLessThanOrEqual(60);
    }
  });

  it("are sown again, cress the most often", () => {
    const gaps = QUICK_GREENS.map(({ repeatEveryDays }) => repeatEveryDays?.value[0] ?? 0);
    expect(Math.min(...gaps)).toBe(CRESS.repeatEveryDays?.value[0]);
    expect(gaps.every((gap) => gap > 0)).toBe(true);
  });
});
