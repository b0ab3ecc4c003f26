import { expect, test } from "vitest";
import { detailsOf } from "../../../../src/views/pictures/from-above/details.ts";
import { type Shelving, shelvesAt } from "../../../../src/views/pictures/from-above/shelves.ts";
import { QUARRY } from "../../../gardens.ts";
import { bedsSketchOf } from "./beds.ts";

const { beds } = detailsOf(bedsSketchOf(QUARRY, "2027-06-20"));
const SHELVING: Shelving = {
  ...{ x: 16, y: 50, widthPx: 358, gapPx: 14, wordsPx: 165 },
  heightAbove: () => 20,
  bodyOf: () => ({ svg: [], belowPx: 10 }),
};

test("beds stand in their order, side by side as long as they fit", () => {
  const { cells } = shelvesAt(beds, { pxPerCm: 0.47 }, SHELVING);
  expect(cells.map(({ details }) => details.bed.key)).toEqual(beds.map(({ bed }) => bed.key));
  expect(cells.map(({ y }) => y === cells[0]?.y)).toEqual([true, true, false, false, false]);
  expect(cells[2]?.y).toBe(cells[3]?.y);
  const wide = shelvesAt(beds, { pxPerCm: 0.9 }, SHELVING);
  expect(new Set(wide.cells.slice(1).map(({ y }) => y)).size).toBe(4);
});

test("cells and their words keep to the sheet and apart from each other", () => {
  for (const pxPerCm of [0.3, 0.47, 0.6, 1]) {
    const { cells, endsPx } = shelvesAt(beds, { pxPerCm }, SHELVING);
    for (const [i, cell] of cells.entries()) {
      expect(cell.x + cell.textPx).toBeLessThanOrEqual(16 + 358 + 1e-6);
      expect(cell.bedY).toBe(cell.y + 20);
      expect(cell.bedY + cell.outline.heightPx + 10).toBeLessThanOrEqual(endsPx);
      const next = cells[i + 1];
      if (next && next.y === cell.y) expect(cell.x + cell.outline.widthPx).toBeLessThan(next.x);
    }
  }
});
