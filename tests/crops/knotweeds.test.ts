import { describe, expect, it } from "vitest";
import { KNOTWEED_FAMILY, RHUBARB } from "../../src/crops/knotweeds.ts";

describe("the knotweed family", () => {
  it("has rhubarb, from crowns, left alone its first summer", () => {
    expect(KNOTWEED_FAMILY).toEqual([RHUBARB]);
    expect(RHUBARB.starts[0]).toBe("crowns");
    expect(RHUBARB.perennial?.firstHarvestYear.value).toBe(2);
  });

  it("warns of its leaves", () => {
    expect(RHUBARB.harvest.caution).toMatch(/leaves.*poisonous/);
  });
});
