import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { askedSoilC, firstWarmSoil } from "../../../src/engine/growth/warm-soil.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { always, growingOf } from "./growing.ts";

const beet = growingOf(QUARRY, "beet");
const tomato = growingOf(QUARRY, "tomato");
const season = seasonOf(planOf(QUARRY));

const told = (growing: typeof beet, soilF: number, shiftK = 0) => {
  const day = firstWarmSoil(growing, celsius(soilF), shiftK);
  return day && isoOf(day);
};

describe("the first day of warm enough soil", () => {
  test("is the first of the season that reaches it, and no day before does", () => {
    const day = firstWarmSoil(beet, celsius(50), 0);
    if (day === null) throw new Error("the lane's soil gets warm");
    const soil = (on: number) => beet.climate.soilC(plus(day, on), beet.bed);
    expect(soil(0)).toBeGreaterThanOrEqual(celsius(50));
    for (let back = 1; day - back >= season.from; back++)
      expect(soil(-back)).toBeLessThan(celsius(50));
  });

  test("at the lane is 24 April for 45 °F", () => {
    expect(told(beet, 45)).toBe("2027-04-24");
  });

  test("comes sooner under film, and in a bed of its own answer", () => {
    expect(told(tomato, 55)).toBe("2027-05-06");
    expect(told(beet, 55)).toBe("2027-05-22");
    expect(told(tomato, 55)).toBe("2027-05-06");
  });

  test("is the season's first where soil is always warm", () => {
    const warm = growingOf(QUARRY, "beet", { plan: { site: always(20) } });
    expect(firstWarmSoil(warm, 15, 0)).toBe(season.from);
  });

  test("is none where it never is", () => {
    expect(told(beet, 95)).toBeNull();
    expect(told(beet, 95)).toBeNull();
  });

  test("is asked less of soil that is hardly warmer at its best, so that a cool summer's courgettes go out by June", () => {
    const cool = growingOf(withCrops("maritime", ["courgette: 3 plants"]), "summer-squash");
    expect(askedSoilC(cool, celsius(60))).toBeLessThan(13.5);
    expect(askedSoilC(cool, celsius(45))).toBe(celsius(45));
    expect(told(cool, 60)).toMatch(/^2027-0(5-[23]|6-0)/);
    expect(askedSoilC(growingOf(QUARRY, "beet"), celsius(60))).toBe(celsius(60));
  });

  test("is no later in a warmer season, nor earlier for warmer soil", () => {
    const soilC = fc.double({ min: 1, max: 18, noNaN: true });
    const shiftK = fc.constantFrom(-3, -1.5, 0, 1, 2.5);
    fc.assert(
      fc.property(soilC, fc.double({ min: 0, max: 5, noNaN: true }), shiftK, (at, more, shift) => {
        const day = (minC: number, warmer: number) =>
          firstWarmSoil(beet, minC, warmer) ?? plus(season.to, 1);
        return day(at, shift + 1) <= day(at, shift) && day(at + more, shift) >= day(at, shift);
      }),
    );
  });

  test("is looked for in the year's own season", () => {
    const next = growingOf(QUARRY.replace("2027", "2031"), "beet");
    expect(firstWarmSoil(next, celsius(45), 0)).toBe(plus(isoDay("2027-04-24"), 1461));
  });
});

describe("soil of days whose weather is known", () => {
  const mild = (days: number) =>
    new Map(
      Array.from({ length: 60 }, (_, on) => {
        const highC = on >= 20 && on < 20 + days ? 60 : 0;
        return [plus(isoDay("2027-02-01"), on), { lowC: 0, highC }] as const;
      }),
    );
  const withDays = (days: number) => {
    const climate = climateOf(planOf(QUARRY), [], mild(days));
    const day = firstWarmSoil({ ...beet, climate }, 7, 0);
    return day === null ? null : day;
  };

  test("counts once it has been warm for three days running, and a shorter spell for nothing", () => {
    const long = withDays(8);
    const climate = climateOf(planOf(QUARRY), [], mild(8));
    if (long === null) throw new Error("a warm spell");
    expect(long).toBeLessThan(isoDay("2027-04-01"));
    for (let back = 0; back < 3; back++)
      expect(climate.soilAheadC(plus(long, -back), beet.bed)).toBeGreaterThanOrEqual(7);
    expect(climate.soilAheadC(plus(long, -3), beet.bed)).toBeLessThan(7);
    expect(withDays(1)).toBeGreaterThan(isoDay("2027-04-01"));
  });

  test("is not trusted in a mild week: half of its warmth is gone by the time that seed is up", () => {
    const climate = climateOf(planOf(QUARRY), [], mild(4));
    const day = plus(isoDay("2027-02-01"), 24);
    expect(climate.soilC(day, beet.bed)).toBeGreaterThan(9);
    expect(withDays(4)).toBeGreaterThan(isoDay("2027-04-01"));
  });
});
