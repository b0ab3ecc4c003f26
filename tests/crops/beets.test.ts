import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { BEET, BEET_FAMILY, CHARD, SPINACH } from "../../src/crops/beets.ts";
import { inch } from "./walk.ts";

describe("the beet family", () => {
  it("is of one family", () => {
    expect(BEET_FAMILY).toEqual([BEET, SPINACH, CHARD]);
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

  it("has spinach by its own row, up to soil of 68 °F", () => {
    expect(SPINACH.comesUp).toEqual({ kind: "table", row: "spinach", standsIn: null });
    expect(fahrenheit(SPINACH.outdoors?.soilMaxC?.value ?? 0)).toBeCloseTo(68, 9);
  });

  it("has spinach that bolts in long days once it is mild, and beets that do not", () => {
    expect(SPINACH.limits.longDays?.value).toEqual({ hours: 14, aboveC: 16 });
    expect(BEET.limits.longDays).toBeNull();
  });
});
