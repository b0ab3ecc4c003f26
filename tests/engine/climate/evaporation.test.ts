import { describe, expect, test } from "vitest";
import {
  grassMm,
  pressureKPa,
  referenceMm,
  saturationKPa,
  saturationSlope,
  type Weather,
} from "../../../src/engine/climate/evaporation.ts";
import { isoDay } from "../../gardens.ts";

const WEATHER: Weather = {
  lowC: 12,
  highC: 24,
  vapourKPa: 1.4,
  windMs: 2,
  netMJ: 13,
  altitudeM: 0,
};
const JULY = { day: isoDay("2027-07-15"), latitude: 46.6, lowC: 9, highC: 28 };

describe("vapour and pressure of the air", () => {
  test("rise and fall as they should, with a slope that is the curve's own", () => {
    expect(saturationKPa(0)).toBeCloseTo(0.6108, 4);
    expect(saturationKPa(20)).toBeCloseTo(2.338, 3);
    const step = (saturationKPa(20.001) - saturationKPa(19.999)) / 0.002;
    expect(saturationSlope(20)).toBeCloseTo(step, 3);
    expect(pressureKPa(0)).toBe(101.3);
    expect(pressureKPa(1000)).toBeLessThan(91);
  });
});

describe("what grass gives off", () => {
  test("is more with more sun, more wind and drier air", () => {
    const usual = grassMm(WEATHER);
    expect(grassMm({ ...WEATHER, netMJ: 16 })).toBeGreaterThan(usual);
    expect(grassMm({ ...WEATHER, windMs: 4 })).toBeGreaterThan(usual);
    expect(grassMm({ ...WEATHER, vapourKPa: 1 })).toBeGreaterThan(usual);
  });

  test("is never less than nothing", () => {
    expect(grassMm({ ...WEATHER, netMJ: -30, vapourKPa: 2 })).toBe(0);
  });
});

describe("by lows and highs alone", () => {
  test("is most in summer, and of its own half of the world's", () => {
    const winter = { ...JULY, day: isoDay("2027-01-15") };
    expect(referenceMm(JULY)).toBeGreaterThan(referenceMm(winter));
    const south = { ...JULY, latitude: -46.6 };
    expect(referenceMm(south)).toBeLessThan(referenceMm({ ...south, day: winter.day }));
  });

  test("is five to six millimetres on a hot July day at 46.6 N", () => {
    expect(referenceMm(JULY)).toBeGreaterThan(5);
    expect(referenceMm(JULY)).toBeLessThan(6);
  });

  test("is more the farther low and high lie apart", () => {
    expect(referenceMm({ ...JULY, lowC: 14, highC: 23 })).toBeLessThan(referenceMm(JULY));
  });

  test("stands at sea level where no altitude is given", () => {
    expect(referenceMm({ ...JULY, altitudeM: 0 })).toBe(referenceMm(JULY));
    expect(referenceMm({ ...JULY, altitudeM: 1500 })).not.toBe(referenceMm(JULY));
  });

  test("is a number, and not below nothing, in polar night", () => {
    const night = { day: isoDay("2027-12-21"), latitude: 78, lowC: -20, highC: -12 };
    expect(referenceMm(night)).toBeGreaterThanOrEqual(0);
    expect(referenceMm(night)).toBeLessThan(0.5);
  });
});
