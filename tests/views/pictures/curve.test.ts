import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { curveOf, outlineOf } from "../../../src/views/pictures/curve.ts";

/** Every number of a path as pairs. */
const pairs = (d: string) =>
  (d.match(/-?\d+(?:\.\d+)? -?\d+(?:\.\d+)?/g) ?? []).map((pair) => pair.split(" ").map(Number));

describe("a curve", () => {
  test("goes through its points in cubic pieces", () => {
    expect(
      curveOf([
        { x: 0, y: 0 },
        { x: 30, y: 30 },
      ]),
    ).toBe("M0 0C10 10 20 20 30 30");
    expect(curveOf([])).toBe("");
  });

  test("never leaves the heights of the two points it runs between", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 2, maxLength: 20 }),
        (heights) => {
          const points = heights.map((y, i) => ({ x: i * 30, y }));
          const [, ...rest] = pairs(curveOf(points));
          points.slice(1).forEach(({ y }, i) => {
            const before = points[i]?.y ?? y;
            for (const [, handle = Number.NaN] of rest.slice(3 * i, 3 * i + 3)) {
              expect(handle).toBeGreaterThanOrEqual(Math.min(before, y) - 0.06);
              expect(handle).toBeLessThanOrEqual(Math.max(before, y) + 0.06);
            }
          });
        },
      ),
      { numRuns: 200, seed: 5 },
    );
  });

  test("lies flat where it turns", () => {
    const turning = curveOf([
      { x: 0, y: 0 },
      { x: 30, y: 60 },
      { x: 60, y: 0 },
    ]);
    expect(turning).toContain("20 60 30 60C40 60");
  });
});

test("an outline runs along the upper points, back along the lower, and closes", () => {
  const outline = outlineOf(
    [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
    ],
    [
      { x: 0, y: 9 },
      { x: 30, y: 9 },
    ],
  );
  expect(outline).toBe("M0 0C10 0 20 0 30 0L30 9C20 9 10 9 0 9Z");
  expect(outlineOf([], [])).toBe("");
});
