import { describe, expect, it } from "vitest";
import { GRAPE } from "../../src/crops/grapes.ts";

describe("a grape vine", () => {
  it("is pruned long before it grows, stopped in summer, and netted as it ripens", () => {
    const days = GRAPE.care.map(({ step, days }) => [step, days.value[0]] as const);
    expect(days.map(([step]) => step)).toEqual(["prune", "feed", "shoots", "net"]);
    expect(days[0]?.[1]).toBeLessThan(-100);
  });

  it("bears from its third summer", () => {
    expect(GRAPE.perennial?.firstHarvestYear.value).toBe(3);
    expect(GRAPE.harvest.kind).toBe("again and again");
  });
});
