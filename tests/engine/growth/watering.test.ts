import { describe, expect, test } from "vitest";
import {
  areaM2Of,
  DRIP_EFFICIENCY,
  dripMinutes,
  litresOn,
  runsOf,
} from "../../../src/engine/growth/watering.ts";
import type { Bed } from "../../../src/garden/model/plan.ts";
import { QUARRY } from "../../gardens.ts";
import { must } from "../../sources/ours.ts";
import { growingOf } from "./growing.ts";

const bedOf = (name: string): Bed => must(growingOf(QUARRY, name).bed);

describe("water on a bed", () => {
  test("is a litre a square metre for each millimetre", () => {
    expect(litresOn(4.5, 25)).toBe(112.5);
  });

  test("runs so long that nine parts in ten of it reach the roots", () => {
    const bed = { needMm: 25, areaM2: 4, flowLh: 50 };
    expect(dripMinutes({ ...bed, efficiency: 1 })).toBe(120);
    expect(DRIP_EFFICIENCY).toBe(0.9);
    expect(dripMinutes(bed)).toBeCloseTo(133.333, 3);
    expect(dripMinutes({ ...bed, needMm: 0 })).toBe(0);
  });

  test("is no question of lines that give nothing", () => {
    expect(() => dripMinutes({ needMm: 25, areaM2: 4, flowLh: 0 })).toThrow(RangeError);
    expect(() => dripMinutes({ needMm: 25, areaM2: 4, flowLh: Number.NaN })).toThrow(RangeError);
  });
});

describe("the ground of a bed", () => {
  test("is its length times its width, or all its bags", () => {
    expect(areaM2Of(bedOf("beet"))).toBeCloseTo(48 * 0.09290304, 6);
    expect(areaM2Of(bedOf("potato"))).toBeCloseTo(6 * Math.PI * 0.2032 ** 2, 6);
  });

  test("is not known where the plan gives no size", () => {
    expect(areaM2Of({ ...bedOf("beet"), lengthCm: null })).toBeNull();
  });
});

describe("minutes of a week", () => {
  test("are to the nearest ten, and never none", () => {
    expect(runsOf(44)).toEqual({ times: 1, minutes: 40 });
    expect(runsOf(46)).toEqual({ times: 1, minutes: 50 });
    expect(runsOf(2)).toEqual({ times: 1, minutes: 10 });
  });

  test("are as few runs as keep each within an hour, and never more than one a day", () => {
    expect(runsOf(64)).toEqual({ times: 1, minutes: 60 });
    expect(runsOf(66)).toEqual({ times: 2, minutes: 30 });
    expect(runsOf(155)).toEqual({ times: 3, minutes: 50 });
    expect(runsOf(700)).toEqual({ times: 7, minutes: 100 });
  });
});
