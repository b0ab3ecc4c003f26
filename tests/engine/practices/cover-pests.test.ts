import { describe, expect, test } from "vitest";
import { howCovered, PESTS } from "../../../src/engine/practices/cover-pests.ts";

describe("what a cover is against", () => {
  test("is told in one short sentence for each pest", () => {
    for (const { keepsOff } of Object.values(PESTS)) {
      expect(keepsOff).toMatch(/^[A-Z].*\.$/);
      expect(keepsOff.length).toBeLessThan(80);
    }
  });

  test("winters in the soil, all but birds", () => {
    const outside = Object.entries(PESTS).filter(([, { wintersAfter }]) => wintersAfter === null);
    expect(outside.map(([pest]) => pest)).toEqual(["birds"]);
  });
});

test("a cover is a net or fabric, on hoops, shut with soil where a gap lets pests in", () => {
  expect(howCovered("fabric", true)).toMatch(/^Fabric on hoops/);
  expect(howCovered("net", true)).toContain("Bury its edges");
  expect(howCovered("net", false)).toContain("pegged or weighed down");
});
