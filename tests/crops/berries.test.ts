import { describe, expect, it } from "vitest";
import {
  AUTUMN_RASPBERRY,
  BERRIES,
  BLACKCURRANT,
  BLUEBERRY,
  GOOSEBERRY,
  RASPBERRY,
  REDCURRANT,
} from "../../src/crops/berries.ts";

const steps = (crop: (typeof BERRIES)[number]) => crop.care.map(({ step }) => step);

describe("soft fruit", () => {
  it("is pruned, fed and picked every year from its second or third summer", () => {
    expect(BERRIES).toHaveLength(7);
    for (const crop of BERRIES) {
      expect(steps(crop), crop.key).toContain("feed");
      expect(steps(crop).some((step) => ["prune", "canes"].includes(step))).toBe(true);
      expect(crop.perennial?.firstHarvestYear.value).toBeGreaterThanOrEqual(2);
    }
  });

  it("has summer raspberries cut after picking, and autumn ones in winter", () => {
    const cut = [RASPBERRY, AUTUMN_RASPBERRY].map(
      ({ care }) => care.find(({ step }) => step === "canes")?.days.value[0] ?? 0,
    );
    expect(cut[0]).toBeGreaterThan(0);
    expect(cut[1]).toBeLessThan(0);
    expect(RASPBERRY.support?.things).toEqual(["posts and two wires"]);
  });

  it("has families of its own", () => {
    expect([BLACKCURRANT, REDCURRANT, GOOSEBERRY, BLUEBERRY].map(({ family }) => family)).toEqual([
      "gooseberry family",
      "gooseberry family",
      "gooseberry family",
      "heather family",
    ]);
  });
});
