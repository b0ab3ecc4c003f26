import { describe, expect, it } from "vitest";
import { OVER_WINTER, SPRING_CABBAGE, SPROUTING_BROCCOLI } from "../../src/crops/sprouting.ts";

describe("cabbages that stand the winter", () => {
  it("take most of a year by the calendar and not by warmth", () => {
    expect(OVER_WINTER).toEqual([SPROUTING_BROCCOLI, SPRING_CABBAGE]);
    for (const { key, warmth, harvest, frost } of OVER_WINTER) {
      expect(warmth, key).toBeNull();
      expect(harvest.days.value[0], key).toBeGreaterThanOrEqual(240);
      expect(frost.value, key).toBe("very hardy");
    }
  });

  it("go out in early summer, or in early autumn", () => {
    expect(SPROUTING_BROCCOLI.settingOut?.weeksFromLastFrost.value).toBe(5);
    expect(SPRING_CABBAGE.settingOut?.weeksFromLastFrost.value).toBe(21);
  });
});
