import { describe, expect, it } from "vitest";
import { AS_ONION, FEED_LEAVES, ONION_SETTING_OUT } from "../../src/crops/onion-ways.ts";

describe("what the onion family has in common", () => {
  it("says why another row is used for its seed", () => {
    expect(AS_ONION.standsIn?.source.kind).toBe("derived");
  });

  it("goes out before the last frost, and is fed once it grows", () => {
    expect(ONION_SETTING_OUT.weeksFromLastFrost.value).toBeLessThan(0);
    expect(FEED_LEAVES.from).toBe("in place");
    expect(FEED_LEAVES.days.value[0]).toBeGreaterThan(0);
  });
});
