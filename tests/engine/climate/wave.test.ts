import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  dailySwingShare,
  dampingDepthM,
  REACH_M,
  waveC,
} from "../../../src/engine/climate/wave.ts";

const WAVE = { meanC: 10, swingK: 12, coldest: 20 };

describe("how deep a wave reaches", () => {
  test("is the square root of diffusivity times period over pi", () => {
    expect(dampingDepthM(Math.PI / 86_400, 1)).toBeCloseTo(1, 12);
    expect(dampingDepthM(Math.PI / 86_400, 4)).toBeCloseTo(2, 12);
  });

  test("is some two metres for the year and a hand's width for the day", () => {
    expect(REACH_M.year).toBeCloseTo(2.24, 2);
    expect(REACH_M.day).toBeCloseTo(0.117, 3);
  });
});

describe("the wave in the soil", () => {
  test("is coldest at the surface on its coldest day", () => {
    expect(waveC(WAVE, 20, 0)).toBe(-2);
    expect(waveC(WAVE, 20 + 365 / 2, 0)).toBeCloseTo(22, 9);
  });

  test("has shrunk to 1/e at the depth it reaches, and is as much later", () => {
    const days = Array.from({ length: 3650 }, (_, i) => waveC(WAVE, i / 10, REACH_M.year));
    expect(Math.min(...days)).toBeCloseTo(10 - 12 / Math.E, 4);
    expect(days.indexOf(Math.min(...days)) / 10).toBeCloseTo(20 + 365 / (2 * Math.PI), 0);
  });

  test("never leaves the surface's range at any depth, and is the same a year on", () => {
    const day = fc.double({ min: 0, max: 365, noNaN: true });
    fc.assert(
      fc.property(day, fc.double({ min: 0, max: 10, noNaN: true }), (at, depthM) => {
        const there = waveC(WAVE, at, depthM);
        return Math.abs(there - 10) <= 12 && Math.abs(there - waveC(WAVE, at + 365, depthM)) < 1e-9;
      }),
    );
  });
});

describe("what is felt of a day's swing", () => {
  test("is all of it at the surface and about a third at the depth the day reaches", () => {
    expect(dailySwingShare(0)).toBe(1);
    expect(dailySwingShare(REACH_M.day * 100)).toBeCloseTo(1 / Math.E, 9);
  });

  test("is four fifths an inch down, and squared at twice the depth", () => {
    expect(dailySwingShare(2.54)).toBeCloseTo(0.8, 1);
    expect(dailySwingShare(5.08)).toBeCloseTo(dailySwingShare(2.54) ** 2, 9);
  });
});
