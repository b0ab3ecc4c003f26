import { describe, expect, it } from "vitest";
import { CARROT, CARROT_FAMILY } from "../../src/crops/carrots.ts";

describe("the carrot family", () => {
  it("is of one family", () => {
    expect(CARROT_FAMILY).toContain(CARROT);
    for (const { family } of CARROT_FAMILY) expect(family).toBe("carrot family");
  });

  it("has slow carrots, by beet's row, which is said to stand in", () => {
    expect(CARROT.slow).toBe(true);
    expect(CARROT.comesUp).toMatchObject({ kind: "table", row: "beet" });
    expect(CARROT.comesUp.kind === "table" && CARROT.comesUp.standsIn?.value).toBe("beet");
  });

  it("thins carrots twice", () => {
    expect(CARROT.thinnings.map(({ step }) => step)).toEqual(["1", "2"]);
  });
});
