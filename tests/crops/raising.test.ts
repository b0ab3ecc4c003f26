import { describe, expect, it } from "vitest";
import { GOURD_INDOORS } from "../../src/crops/gourd-ways.ts";
import { CABBAGE_NET, LEAF_MINER_NET, RAISED_COOL, RAISED_WARM } from "../../src/crops/raising.ts";

describe("what crops have in common as they are raised and covered", () => {
  it("keeps warm crops warmer, at night too, and gourds a shorter time", () => {
    expect(RAISED_WARM.nightFloorC.value).toBeGreaterThan(RAISED_COOL.nightFloorC.value);
    expect(RAISED_WARM.soilTempC.value).toBeGreaterThan(RAISED_COOL.soilTempC.value);
    expect(GOURD_INDOORS.weeksToSettingOut.value[1]).toBeLessThan(
      RAISED_COOL.weeksToSettingOut.value[0],
    );
  });

  it("nets cabbages until they are cut, and beets while they are young", () => {
    expect(CABBAGE_NET.off).toBe("first harvest");
    expect(LEAF_MINER_NET).toMatchObject({ on: "up", off: "up" });
  });
});
