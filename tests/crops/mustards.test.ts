import { describe, expect, it } from "vitest";
import { ARUGULA, BOK_CHOY, MUSTARDS, RUTABAGA } from "../../src/crops/mustards.ts";

describe("the greens and the yellow root of the cabbage family", () => {
  it("are of the cabbage family, netted from the day they go in", () => {
    for (const { family, covers } of MUSTARDS) {
      expect(family).toBe("cabbage family");
      expect(covers[0]?.on).toBe("in place");
    }
  });

  it("bolt after cold while young or in long days", () => {
    expect(BOK_CHOY.limits.coldYoung).not.toBeNull();
    expect(ARUGULA.limits.longDays).not.toBeNull();
  });

  it("have a root that takes the whole summer", () => {
    expect(RUTABAGA.eaten).toBe("root");
    expect(RUTABAGA.harvest.days.value[0]).toBeGreaterThan(80);
  });
});
