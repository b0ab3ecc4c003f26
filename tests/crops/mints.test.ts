import { describe, expect, it } from "vitest";
import { BASIL, MINT_FAMILY } from "../../src/crops/mints.ts";

describe("the mint family", () => {
  it("has basil, that stands no cold at all", () => {
    expect(MINT_FAMILY).toEqual([BASIL]);
    expect(BASIL.frost.value).toBe("warm loving");
    expect(BASIL.indoors?.nightFloorC.value).toBe(10);
  });

  it("is pinched out before it is picked", () => {
    expect(BASIL.care.map(({ practice }) => practice)).toEqual(["stop the tops"]);
  });
});
