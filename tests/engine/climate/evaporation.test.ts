import { describe, expect, test } from "vitest";
import {
  type EvaporationWeather,
  penmanMonteithMm,
  pressureKPa,
  referenceEvaporationMm,
  saturationKPa,
  saturationSlope,
} from "../../../src/engine/climate/evaporation.ts";
import { isoDay } from "../../gardens.ts";

const WEATHER: EvaporationWeather = {
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
    const usual = penmanMonteithMm(WEATHER);
    expect(penmanMonteithMm({ ...WEATHER, netMJ: 16 })).toBeGreaterThan(usual);
    expect(penmanMonteithMm({ ...WEATHER, windMs: 4 })).toBeGreaterThan(usual);
    expect(penmanMonteithMm({ ...WEATHER, vapourKPa: 1 })).toBeGreaterThan(usual);
  });

  test("is never less than nothing", () => {
    expect(penmanMonteithMm({ ...WEATHER, netMJ: -30, vapourKPa: 2 })).toBe(0);
  });
});

describe("by lows and highs alone", () => {
  test("is most in summer, and of its own half of the world's", () => {
    const winter = { ...JULY, day: isoDay("2027-01-15") };
    expect(referenceEvaporationMm(JULY)).toBeGreaterThan(referenceEvaporationMm(winter));
    const south = { ...JULY, latitude: -46.6 };
    expect(referenceEvaporationMm(south)).toBeLessThan(
      referenceEvaporationMm({ ...south, day: winter.day }),
    );
  });

  test("is five to six millimetres on a hot July day at 46.6 N", () => {
    expect(referenceEvaporationMm(JULY)).toBeGreaterThan(5);
    expect(referenceEvaporationMm(JULY)).toBeLessThan(6);
  });

  test("is more the farther low and high lie apart", () => {
    expect(referenceEvaporationMm({ ...JULY, lowC: 14, highC: 23 })).toBeLessThan(
      referenceEvaporationMm(JULY),
    );
  });

  test("stands at sea level where no altitude is given", () => {
    expect(referenceEvaporationMm({ ...JULY, altitudeM: 0 })).toBe(referenceEvaporationMm(JULY));
    expect(referenceEvaporationMm({ ...JULY, altitudeM: 1500 })).not.toBe(
      referenceEvaporationMm(JULY),
    );
  });

  test("is a number, and not below nothing, in polar night", () => {
    const night = { day: isoDay("2027-12-21"), latitude: 78, lowC: -20, highC: -12 };
    expect(referenceEvaporationMm(night)).toBeGreaterThanOrEqual(0);
    expect(referenceEvaporationMm(night)).toBeLessThan(0.5);
  });
});
