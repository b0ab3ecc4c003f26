import { describe, expect, it } from "vitest";
import { BEET, BEET_FAMILY } from "../../src/crops/beets.ts";
import { inch } from "./walk.ts";

describe("the beet family", () => {
  it("is of one family", () => {
    expect(BEET_FAMILY).toContain(BEET);
    for (const { family } of BEET_FAMILY) expect(family).toBe("beet family");
  });

  it("has beets that are sown where they grow, three weeks before the last frost", () => {
    expect(BEET.starts[0]).toBe("seed outdoors");
    expect(BEET.outdoors?.weeksFromLastFrost?.value).toBe(-3);
    expect(BEET.frost.value).toBe("frost tolerant");
  });

  it("thins the clusters once, to a hand's breadth", () => {
    expect(BEET.thinnings).toHaveLength(1);
    expect(BEET.thinnings[0]?.apartCm.value).toEqual([inch(3), inch(4)]);
  });
});
