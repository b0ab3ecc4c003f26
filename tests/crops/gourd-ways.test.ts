import { describe, expect, it } from "vitest";
import {
  BEETLE_FABRIC,
  BEETLE_LOOK,
  FEED_AT_FRUIT,
  SQUASH_LOOK,
} from "../../src/crops/gourd-ways.ts";
import { GOURD_FAMILY } from "../../src/crops/gourds.ts";

describe("what gourds have in common", () => {
  it("is fabric that comes off for the bees, on every one of them", () => {
    expect(BEETLE_FABRIC.off).toBe("flower");
    for (const { key, covers, flowers } of GOURD_FAMILY) {
      expect(covers, key).toEqual([BEETLE_FABRIC]);
      expect(flowers?.forBees, key).toBe(true);
    }
  });

  it("is feeding at the first fruits and a look for pests after the fabric", () => {
    for (const { key, care } of GOURD_FAMILY) {
      expect(care, key).toContain(FEED_AT_FRUIT);
      expect(
        care.some((each) => each === BEETLE_LOOK || each === SQUASH_LOOK),
        key,
      ).toBe(true);
    }
    for (const look of [BEETLE_LOOK, SQUASH_LOOK]) {
      expect(look.days.value[0]).toBeGreaterThan(BEETLE_FABRIC.offDays.value[1]);
      expect(look.caution).toMatch(/bees/);
    }
  });

  it("is a few weeks under cover at the most", () => {
    for (const { key, indoors } of GOURD_FAMILY)
      expect(indoors?.weeksToSettingOut.value[1], key).toBeLessThanOrEqual(4);
  });
});
