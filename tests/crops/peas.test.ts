import { describe, expect, it } from "vitest";
import { isTender } from "../../src/crops/crops.ts";
import { BEAN, PEA, PEA_FAMILY } from "../../src/crops/peas.ts";
import { fahrenheit } from "../../src/quantities/quantity.ts";

const soilF = (crop: typeof PEA) => fahrenheit(crop.outdoors?.soilMinC.value ?? 0);

describe("the pea family", () => {
  it("is of one family", () => {
    expect(PEA_FAMILY).toEqual([BEAN, PEA]);
    for (const { family } of PEA_FAMILY) expect(family).toBe("pea family");
  });

  it("has peas into cold soil and beans into warm", () => {
    expect(soilF(PEA)).toBeCloseTo(40, 9);
    expect(soilF(BEAN)).toBeCloseTo(55, 9);
    expect([isTender(PEA), isTender(BEAN)]).toEqual([false, true]);
  });

  it("sows both at the distance they stand at, with no thinning", () => {
    for (const { thinnings } of PEA_FAMILY) expect(thinnings).toEqual([]);
  });

  it("picks both again and again for some weeks", () => {
    for (const { harvest } of PEA_FAMILY) {
      expect(harvest).toMatchObject({ kind: "again and again", verb: "Pick" });
      expect(harvest.bearsDays?.value[0] ?? 0).toBeGreaterThanOrEqual(14);
    }
  });

  it("ends peas with heat, and nets them against birds until they climb", () => {
    expect(fahrenheit(PEA.limits.heatC?.value ?? 0)).toBeCloseTo(70, 9);
    expect(BEAN.limits.heatC).toBeNull();
    expect(PEA.covers[0]?.against).toBe("birds");
    expect(PEA.covers[0]?.offSign).toContain("climb");
    expect(BEAN.covers).toEqual([]);
  });

  it("has the days of peas from Delaware's 1,250 degree days at 60 °F", () => {
    const days = 1250 / (fahrenheit(PEA.warmth?.packetC.value ?? 0) - 40);
    expect(PEA.harvest.days.value[0]).toBe(Math.floor(days + 1e-9));
  });
});
