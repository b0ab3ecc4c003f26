import { expect, test } from "vitest";
import { detailsOf } from "../../../../src/views/pictures/from-above/details.ts";
import { scaleFor, shelvesAbove } from "../../../../src/views/pictures/from-above/scales.ts";
import type { Shelving } from "../../../../src/views/pictures/from-above/shelves.ts";
import { QUARRY } from "../../../gardens.ts";
import { BEDS, bedsSketchOf } from "./beds.ts";

const bedsOf = (text: string) => detailsOf(bedsSketchOf(text, "2027-06-20")).beds;
const SHELVING: Shelving = {
  ...{ x: 16, y: 50, widthPx: 358, gapPx: 14, wordsPx: 165 },
  heightAbove: () => 20,
  bodyOf: () => ({ svg: [], belowPx: 10 }),
};

test("a scale lets the rows of a common bed be told apart, and no bed fill a wall", () => {
  for (const text of [QUARRY, ...Object.values(BEDS)]) {
    const { pxPerCm } = scaleFor(bedsOf(text), SHELVING);
    expect(pxPerCm).toBeGreaterThanOrEqual(0.29);
    expect(pxPerCm).toBeLessThanOrEqual(1.05);
  }
});

test("a border as long as a field lies in eight strips at the most, at whatever scale that takes", () => {
  const field = (BEDS["a hundred feet beside a pot"] ?? "").replace("100 x 3 ft", "1000 x 3 ft");
  const { pxPerCm } = scaleFor(bedsOf(field), SHELVING);
  expect(Math.ceil((30480 * pxPerCm) / 358 - 1e-6)).toBeLessThanOrEqual(8);
});

test("on a page the largest scale is taken at which everything ends above its foot, or none", () => {
  const both = { rough: SHELVING, exact: SHELVING };
  const roomy = shelvesAbove(bedsOf(QUARRY), 900, both);
  const tight = shelvesAbove(bedsOf(QUARRY), 330, both);
  expect(roomy?.endsPx).toBeLessThanOrEqual(900);
  expect(tight?.endsPx).toBeLessThanOrEqual(330);
  expect(tight?.pxPerCm).toBeLessThan(roomy?.pxPerCm ?? 0);
  expect(shelvesAbove(bedsOf(QUARRY), 100, both)).toBeNull();
});
