import { describe, expect, it } from "vitest";
import { BASIL, MINT_FAMILY, SAVORY } from "../../src/crops/mints.ts";

describe("the mint family", () => {
  it("has basil, which survives no cold at all", () => {
    expect(MINT_FAMILY).toEqual([BASIL, SAVORY]);
    expect(BASIL.frost.value).toBe("warm loving");
    expect(BASIL.indoors?.nightFloorC.value).toBe(10);
  });

  it("has savory, sown in its place, slow to come up and thinned once", () => {
    expect(SAVORY.starts[0]).toBe("seed outdoors");
    expect(SAVORY.slow).toBe(true);
    expect(SAVORY.thinnings).toHaveLength(1);
  });

  it("has basil that is cut for months, as long as its flowers are taken off", () => {
    expect(BASIL.harvest.bearsDays?.value).toEqual([80, 120]);
  });

  it("is pinched out before it is picked", () => {
    expect(BASIL.care.map(({ practice }) => practice)).toEqual(["stop the tops"]);
  });
});
