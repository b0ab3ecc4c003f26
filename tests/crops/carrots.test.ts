import { describe, expect, it } from "vitest";
import {
  CARROT,
  CARROT_FAMILY,
  HAMBURG_PARSLEY,
  PARSLEY,
  PARSNIP,
} from "../../src/crops/carrots.ts";

describe("the carrot family", () => {
  it("is of one family", () => {
    expect(CARROT_FAMILY).toEqual([CARROT, HAMBURG_PARSLEY, PARSLEY, PARSNIP]);
    for (const { family } of CARROT_FAMILY) expect(family).toBe("carrot family");
  });

  it("has slow carrots, by their own row", () => {
    expect(CARROT.slow).toBe(true);
    expect(CARROT.comesUp).toEqual({ kind: "table", row: "carrot", standsIn: null });
  });

  it("thins carrots twice", () => {
    expect(CARROT.thinnings.map(({ step }) => step)).toEqual(["1", "2"]);
  });

  it("is slow to come up throughout, parsley and parsnip by rows of their own", () => {
    for (const { slow } of CARROT_FAMILY) expect(slow).toBe(true);
    expect(PARSLEY.comesUp).toEqual({ kind: "table", row: "parsley", standsIn: null });
    expect(PARSNIP.comesUp).toEqual({ kind: "table", row: "parsnip", standsIn: null });
  });

  it("raises parsley indoors too, and cuts it again and again", () => {
    expect(PARSLEY.starts).toEqual(["seed outdoors", "seed indoors"]);
    expect(PARSLEY.harvest).toMatchObject({ kind: "again and again", verb: "Cut" });
  });

  it("leaves parsnips in the ground for weeks, and warns of their sap", () => {
    expect(PARSNIP.harvest.holdsDays.value).toBeGreaterThanOrEqual(42);
    expect(PARSNIP.harvest.caution).toMatch(/sap/i);
  });
});
