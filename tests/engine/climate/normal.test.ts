import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deviationsAt, ONE_IN_TEN, shareBelow } from "../../../src/engine/climate/normal.ts";

describe("standard deviations of a share", () => {
  test.each([
    [0.01, -2.3263],
    [0.1, -1.2816],
    [0.25, -0.6745],
    [0.5, 0],
    [0.9, 1.2816],
    [0.975, 1.96],
  ])("%d of all values lie below %d", (share, deviations) => {
    expect(Math.abs(deviationsAt(share) - deviations)).toBeLessThan(0.00051);
  });

  test.each([0, 1, -0.1, 1.1, Number.NaN])("there is none for %d", (share) => {
    expect(() => deviationsAt(share)).toThrow(RangeError);
  });
});

test("one in ten lies beyond ONE_IN_TEN on either side", () => {
  expect(shareBelow(ONE_IN_TEN)).toBeCloseTo(0.9, 4);
  expect(shareBelow(-ONE_IN_TEN)).toBeCloseTo(0.1, 4);
  expect(Math.abs(deviationsAt(0.9) - ONE_IN_TEN)).toBeLessThan(0.00051);
});

describe("the share below so many standard deviations", () => {
  test.each([
    [-3, 0.00135],
    [-1, 0.158655],
    [0, 0.5],
    [1, 0.841345],
    [1.2816, 0.900008],
    [2, 0.97725],
  ])("below %d lie %d", (deviations, share) => {
    expect(shareBelow(deviations)).toBeCloseTo(share, 5);
  });

  test("is the other's way back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (share) => Math.abs(shareBelow(deviationsAt(share)) - share) < 0.0003,
      ),
    );
  });
});
