import { describe, expect, test } from "vitest";
import {
  clearSkyMJ,
  geometricHours,
  netLongwaveMJ,
  netShortwaveMJ,
  solarFromSwingMJ,
  sunDeclination,
  sunDistance,
  sunsetAngle,
  topOfAirMJ,
} from "../../../src/engine/climate/radiation.ts";

const YEAR = Array.from({ length: 366 }, (_, i) => i + 1);
const SPRING = 81;
const degrees = (radians: number) => (radians * 180) / Math.PI;

describe("the sun over the year", () => {
  test("is nearest in January and farthest in July", () => {
    const nearest = YEAR.reduce((a, b) => (sunDistance(b) > sunDistance(a) ? b : a));
    const farthest = YEAR.reduce((a, b) => (sunDistance(b) < sunDistance(a) ? b : a));
    expect(nearest).toBeGreaterThan(360);
    expect([181, 182, 183, 184]).toContain(farthest);
  });

  test("stands 23.4° north at midsummer, as far south at midwinter", () => {
    const all = YEAR.map((day) => degrees(sunDeclination(day)));
    expect(Math.max(...all)).toBeCloseTo(23.4, 1);
    expect(Math.min(...all)).toBeCloseTo(-23.4, 1);
  });

  test("sets after a quarter turn everywhere at the equinox", () => {
    for (const latitude of [-60, 0, 60])
      expect(degrees(sunsetAngle(latitude, SPRING))).toBeCloseTo(90, 0);
  });
});

describe("polar days and nights", () => {
  test("are nought and 24 hours, with no light and with most", () => {
    expect(geometricHours(80, 355)).toBe(0);
    expect(geometricHours(80, 172)).toBe(24);
    expect(topOfAirMJ(80, 355)).toBe(0);
    expect(topOfAirMJ(80, 172)).toBeGreaterThan(40);
  });

  test("give a number on every day of the year, at the poles too", () => {
    const odd = [-90, -67, 67, 90].flatMap((latitude) =>
      YEAR.filter((day) => {
        const topMJ = topOfAirMJ(latitude, day);
        const clear = clearSkyMJ(topMJ, 0);
        const swing = { lowC: -20, highC: -10 };
        const solarMJ = solarFromSwingMJ(swing, topMJ);
        const lost = netLongwaveMJ({ ...swing, vapourKPa: 0.1, solarMJ, clearSkyMJ: clear });
        return ![topMJ, clear, solarMJ, lost].every((each) => each >= 0);
      }),
    );
    expect(odd).toEqual([]);
  });

  test("take the sky of polar night for clear, which loses most", () => {
    const night = { lowC: -20, highC: -10, vapourKPa: 0.1, solarMJ: 0, clearSkyMJ: 0 };
    const clear = netLongwaveMJ({ ...night, solarMJ: 5, clearSkyMJ: 5 });
    expect(netLongwaveMJ(night)).toBe(clear);
    expect(netLongwaveMJ({ ...night, solarMJ: 3, clearSkyMJ: 5 })).toBeLessThan(clear);
  });
});

describe("what reaches the ground", () => {
  test("grows with the day's swing up to a clear sky's, and is nothing without one", () => {
    expect(solarFromSwingMJ({ lowC: 10, highC: 19 }, 40)).toBeCloseTo(0.16 * 3 * 40, 9);
    expect(solarFromSwingMJ({ lowC: -10, highC: 30 }, 40)).toBe(clearSkyMJ(40, 0));
    expect(solarFromSwingMJ({ lowC: 10, highC: 10 }, 40)).toBe(0);
    expect(solarFromSwingMJ({ lowC: 11, highC: 10 }, 40)).toBe(0);
  });

  test("is more under a clear sky the higher it lies", () => {
    expect(clearSkyMJ(40, 0)).toBe(30);
    expect(clearSkyMJ(40, 1000)).toBeCloseTo(30.8, 9);
  });

  test("is kept by grass but for the share it sends back", () => {
    expect(netShortwaveMJ(10)).toBeCloseTo(7.7, 9);
  });

  test("counts no sun above a clear sky's as clearer than clear", () => {
    const day = { lowC: 10, highC: 20, vapourKPa: 1.2, clearSkyMJ: 30 };
    expect(netLongwaveMJ({ ...day, solarMJ: 40 })).toBe(netLongwaveMJ({ ...day, solarMJ: 30 }));
  });
});
