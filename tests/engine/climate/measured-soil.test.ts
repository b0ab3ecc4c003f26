import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import {
  MEASURED_LASTS_DAYS,
  measuredSoil,
  soilMeasurementsIn,
} from "../../../src/engine/climate/measured-soil.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import type { Bed } from "../../../src/garden/model/plan.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const DAY = isoDay("2027-05-10");
const bed = (key: string): Bed | null =>
  planOf(QUARRY).beds.find((each) => each.key === key) ?? null;

const measured = (day: Day, soilC: number, inBed: string | null = null): Observation => ({
  kind: "measured",
  day,
  what: "soil",
  bed: inBed,
  value: degreesC(soilC),
});

/** The estimate is 10 °C on every day and in every bed. */
const more = (...facts: readonly Observation[]) =>
  measuredSoil(soilMeasurementsIn(facts), () => 10).correctionK;

describe("soil that was measured", () => {
  test("is nothing where the diary measured none, or only a low", () => {
    const low: Observation = {
      kind: "measured",
      day: DAY,
      what: "low",
      bed: null,
      value: degreesC(2),
    };
    for (const facts of [[], [low]]) {
      const { appliesTo: isIn, correctionK: moreK } = measuredSoil(
        soilMeasurementsIn(facts),
        () => 10,
      );
      expect(isIn(null)).toBe(false);
      expect(moreK(DAY, null)).toBe(0);
    }
  });

  test("puts its day right and fades evenly over two weeks", () => {
    const off = more(measured(DAY, 13));
    expect(MEASURED_LASTS_DAYS).toBe(14);
    expect([0, 7, 13, 14].map((days) => off(plus(DAY, days), null))).toEqual([
      3,
      1.5,
      3 * (1 - 13 / 14),
      0,
    ]);
  });

  test("says nothing of the days before", () => {
    expect(more(measured(DAY, 13))(plus(DAY, -1), null)).toBe(0);
  });

  test("in no bed holds for all; in one bed for that bed alone", () => {
    expect(more(measured(DAY, 13))(DAY, bed("root-bed"))).toBe(3);
    const inRootBed = more(measured(DAY, 13, "root-bed"));
    expect(inRootBed(DAY, bed("root-bed"))).toBe(3);
    expect(inRootBed(DAY, bed("south-bed"))).toBe(0);
    expect(inRootBed(DAY, null)).toBe(0);
    const { appliesTo: isIn } = measuredSoil(
      soilMeasurementsIn([measured(DAY, 13, "root-bed")]),
      () => 10,
    );
    expect([bed("root-bed"), bed("south-bed"), null].map(isIn)).toEqual([true, false, false]);
    expect(
      measuredSoil(soilMeasurementsIn([measured(DAY, 13)]), () => 10).appliesTo(bed("south-bed")),
    ).toBe(true);
  });

  test("gives way to what was measured later, whatever the order of the lines", () => {
    const off = more(measured(plus(DAY, 3), 8), measured(DAY, 13));
    expect(off(plus(DAY, 2), null)).toBeCloseTo(3 * (12 / 14), 9);
    expect(off(plus(DAY, 3), null)).toBe(-2);
  });

  test("is held against the estimate of its own bed and day", () => {
    const estimate = (day: Day, where: Bed | null) => day - DAY + (where ? 12 : 9);
    const off = measuredSoil(soilMeasurementsIn([measured(DAY, 13)]), estimate).correctionK;
    expect(off(DAY, null)).toBe(4);
    expect(off(DAY, bed("root-bed"))).toBe(1);
    expect(off(plus(DAY, 7), null)).toBe(2);
  });
});
