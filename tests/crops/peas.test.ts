import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { BEAN } from "../../src/crops/beans.ts";
import { isTender } from "../../src/crops/crops.ts";
import { BROAD_BEAN, PEA, PEA_FAMILY } from "../../src/crops/peas.ts";

const soilF = (crop: typeof PEA) => fahrenheit(crop.outdoors?.soilMinC.value ?? 0);

describe("the pea family", () => {
  it("is of one family", () => {
    expect(PEA_FAMILY).toEqual(expect.arrayContaining([BEAN, BROAD_BEAN, PEA]));
    expect(PEA_FAMILY).toHaveLength(9);
    for (const { family } of PEA_FAMILY) expect(family).toBe("pea family");
  });

  it("has peas into cold soil and beans into warm", () => {
    expect(soilF(PEA)).toBeCloseTo(40, 9);
    expect(soilF(BEAN)).toBeCloseTo(55, 9);
    expect([isTender(PEA), isTender(BEAN)]).toEqual([false, true]);
  });

  it("sows all of them at their final distance, without thinning", () => {
    for (const { thinnings } of PEA_FAMILY) expect(thinnings).toEqual([]);
  });

  it("has supports that read as well for what was sown before the winter", () => {
    for (const { support } of PEA_FAMILY) expect(support?.how ?? "").not.toContain("as you sow");
  });

  it("picks them again and again for some weeks", () => {
    for (const { harvest } of [BEAN, BROAD_BEAN, PEA]) {
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

  it("sows broad beans with peas, tops them after the flower and warns the few they make ill", () => {
    expect(isTender(BROAD_BEAN)).toBe(false);
    expect(soilF(BROAD_BEAN)).toBeCloseTo(40, 9);
    expect(BROAD_BEAN.care).toContainEqual(
      expect.objectContaining({ practice: "stop the tops", from: "flower" }),
    );
    expect(BROAD_BEAN.harvest.caution).toMatch(/very ill.*doctor/s);
  });

  it("gives peas and broad beans something to climb", () => {
    for (const { support } of [PEA, BROAD_BEAN]) expect(support?.things).not.toEqual([]);
  });
});
