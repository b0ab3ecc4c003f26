import { describe, expect, test } from "vitest";
import { celsius, degreesC } from "../../../src/base/quantities/quantity.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { airUnder, GLASS_NIGHT_K, glassOf, sunShares } from "../../../src/engine/climate/glass.ts";
import type { Bed } from "../../../src/garden/model/plan.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const open = planOf(QUARRY).beds[0] as Bed;
const house = (keptAboveC: number | null): Bed => ({
  ...open,
  kind: "greenhouse",
  keptAbove: keptAboveC === null ? null : degreesC(keptAboveC),
});
const climate = climateOf(planOf(QUARRY), []);
const march = isoDay("2027-03-15");
const july = isoDay("2027-07-15");

describe("air under glass", () => {
  test("is a little warmer at night, and warmer by day the more sun there is", () => {
    const cold = { keptAboveC: null };
    expect(airUnder(cold, { lowC: -5, highC: 3 }, 0.5)).toEqual({
      lowC: -5 + GLASS_NIGHT_K,
      highC: 7,
    });
    expect(airUnder(cold, { lowC: -5, highC: 3 }, 0.1).highC).toBe(5);
  });

  test("is let out by the vents, and never cooler than outdoors", () => {
    const cold = { keptAboveC: null };
    expect(airUnder(cold, { lowC: 10, highC: 22 }, 1).highC).toBe(25);
    expect(airUnder(cold, { lowC: 15, highC: 33 }, 1).highC).toBe(35);
  });

  test("never falls below what it is heated to, by day neither", () => {
    expect(airUnder({ keptAboveC: 10 }, { lowC: -15, highC: -5 }, 0.2)).toEqual({
      lowC: 10,
      highC: 10,
    });
  });

  test("has the sun of its latitude: none in polar night, half of midsummer's in spring", () => {
    expect(Math.min(...sunShares(70))).toBe(0);
    expect(sunShares(45)[171]).toBeCloseTo(1.01, 1);
    expect(sunShares(null)).toEqual(sunShares(45));
  });
});

describe("a garden's climate", () => {
  test("is that of the house for a bed under glass, one object for equal houses", () => {
    expect(climate.at(open)).toBe(climate);
    expect(climate.at(null)).toBe(climate);
    const glass = climate.at(house(null));
    expect(glass.underGlass).toBe(true);
    expect(glass).toBe(climate.at({ ...house(null), key: "other" }));
    expect(glass).not.toBe(climate.at(house(celsius(45))));
    expect(glass.airC(march)).toBeGreaterThan(climate.airC(march) + 2);
    expect(glass.at(open)).toBe(climate);
  });

  test("has soil under glass as much warmer as the air there is, and in a heated house more so", () => {
    const soil = (bed: Bed) => climate.soilC(march, bed);
    expect(soil(house(null))).toBeGreaterThan(soil(open) + 2);
    expect(soil(house(15))).toBeGreaterThan(12);
    expect(climate.soilC(july, house(10))).toBeCloseTo(climate.soilC(july, house(null)), 0);
    expect(climate.soilKey(house(null))).not.toBe(climate.soilKey(open));
  });
});

test("a bed is under glass where it stands in a house, whatever is warmed", () => {
  expect(glassOf(open)).toBeNull();
  expect(glassOf(null)).toBeNull();
  expect(glassOf(house(5))).toEqual({ keptAboveC: 5 });
});
