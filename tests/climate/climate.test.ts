import { describe, expect, test } from "vitest";
import { type Climate, climateOf } from "../../src/climate/climate.ts";
import type { Fact } from "../../src/diary/fact.ts";
import type { Bed } from "../../src/plan/plan.ts";
import { celsius, quantity } from "../../src/quantities/quantity.ts";
import { isoDay, planOf, QUARRY } from "../gardens.ts";

const PLAN = planOf(QUARRY);
const bed = (key: string): Bed | null => PLAN.beds.find((each) => each.key === key) ?? null;

function measured(day: string, fahrenheit: number, inBed: string | null = null): Fact {
  const value = quantity(fahrenheit, "°F");
  return { kind: "measured", day: isoDay(day), what: "soil", bed: inBed, value };
}

const soil = (climate: Climate, day: string, inBed: string | null = null) =>
  Math.round(climate.soilC(isoDay(day), inBed === null ? null : bed(inBed)) * 10) / 10;

describe("the lane's air", () => {
  test("comes from its normals and is not rough", () => {
    const climate = climateOf(PLAN, []);
    expect(climate.rough).toBe(false);
    expect(climate.airC(isoDay("2027-05-15"))).toBeCloseTo(10, 0);
  });

  test("is the same on a day of any year, 29 February as the day before", () => {
    const climate = climateOf(PLAN, []);
    expect(climate.airC(isoDay("2028-07-01"))).toBe(climate.airC(isoDay("2027-07-01")));
    expect(climate.airC(isoDay("2028-02-29"))).toBe(climate.airC(isoDay("2028-02-28")));
    expect(climate.airC(isoDay("2028-03-01"))).toBe(climate.airC(isoDay("2027-03-01")));
  });

  test("is rough without normals", () => {
    const climate = climateOf({ ...PLAN, site: { ...PLAN.site, normals: null } }, []);
    expect(climate.rough).toBe(true);
    expect(climate.airC(isoDay("2027-05-06"))).toBeCloseTo(11, 1);
  });
});

describe("the lane's soil", () => {
  const climate = climateOf(PLAN, []);

  test("lags behind the air in spring, as the mean of eleven days", () => {
    const days = Array.from({ length: 11 }, (_, back) =>
      climate.airC(isoDay(`2027-05-${String(20 - back).padStart(2, "0")}`)),
    );
    const mean = days.reduce((a, b) => a + b, 0) / 11;
    expect(climate.soilC(isoDay("2027-05-20"), null)).toBeCloseTo(mean, 9);
  });

  test("is never below freezing", () => {
    expect(soil(climate, "2027-01-15")).toBe(0);
  });

  test("is three degrees warmer under film", () => {
    const open = climate.soilC(isoDay("2027-05-20"), bed("root-bed"));
    expect(climate.soilC(isoDay("2027-05-20"), bed("south-bed")) - open).toBeCloseTo(3, 9);
  });
});

describe("soil measured in the diary", () => {
  test("is taken on its day", () => {
    expect(soil(climateOf(PLAN, [measured("2027-05-25", 58)]), "2027-05-25")).toBe(
      Math.round(celsius(58) * 10) / 10,
    );
  });

  test("does not change the days before", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70)]);
    expect(soil(climate, "2027-05-24")).toBe(soil(plain, "2027-05-24"));
  });

  test("has half its weight after a week and none after two", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70)]);
    const more = (day: string) => climate.soilC(isoDay(day), null) - plain.soilC(isoDay(day), null);
    expect(more("2027-06-01")).toBeCloseTo(more("2027-05-25") / 2, 9);
    expect(more("2027-06-08")).toBe(0);
  });

  test("in one bed says nothing of another", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70, "south-bed")]);
    expect(soil(climate, "2027-05-25", "south-bed")).toBe(21.1);
    expect(soil(climate, "2027-05-25", "root-bed")).toBe(soil(plain, "2027-05-25", "root-bed"));
  });

  test("gives way to what was measured later", () => {
    const lines = [measured("2027-05-25", 70), measured("2027-05-28", 55)];
    expect(soil(climateOf(PLAN, lines), "2027-05-28")).toBe(12.8);
  });

  test("gives way to the later day whatever the order of the lines", () => {
    const lines = [measured("2027-05-28", 55), measured("2027-05-25", 70)];
    expect(soil(climateOf(PLAN, lines), "2027-05-28")).toBe(12.8);
  });
});
