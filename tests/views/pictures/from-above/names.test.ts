import { describe, expect, test } from "vitest";
import { boxesOf } from "../../../../src/views/pictures/from-above/bed-content.ts";
import { shownPlaces } from "../../../../src/views/pictures/from-above/draw-bed.ts";
import { rowsOn } from "../../../../src/views/pictures/from-above/draw-rows.ts";
import { nameBlocks } from "../../../../src/views/pictures/from-above/names.ts";
import type { Standing } from "../../../../src/views/pictures/from-above/standing.ts";
import { BEDS, bedsSketchOf, contentOf, firstBed, standing } from "./beds.ts";

const BED = firstBed(bedsSketchOf(BEDS["no sizes, no amounts"] ?? "", "2027-06-20"));

function names(all: readonly Standing[], pxPerCm = 0.5) {
  const content = contentOf(BED, all, { pxPerCm });
  const shown = shownPlaces(BED, content).map((place) => ({ place, rows: rowsOn(place, content) }));
  const strips = boxesOf({ x: 0, y: 0, lengthCm: 240, widthCm: 120 }, content);
  return { shown, ...nameBlocks(shown, strips, content) };
}

describe("names in a bed", () => {
  test("stand above their rows where the bed has room for it", () => {
    const { svg, shown, left } = names([standing("Beets"), standing("Chard")]);
    expect(left).toEqual([]);
    const y = Number(/ y="([\d.]+)"/.exec(svg[0] ?? "")?.[1]);
    expect(y).toBeLessThan(Math.min(...(shown[0]?.rows.boxes ?? []).map((box) => box.y)));
  });

  test("are left for below where there is none", () => {
    const all = ["A", "B", "C", "D", "E", "F"].map((name) => standing(`${name} of a long name`));
    const { named, left } = names(all, 0.3);
    expect(named + left.length).toBe(6);
    expect(left.length).toBeGreaterThan(0);
  });

  test("never hide a plant that is counted", () => {
    const all = Array.from({ length: 5 }, (_, i) =>
      standing(`Kale ${i}`, { amount: { kind: "plants", count: 24 } }),
    );
    const { shown, covered } = names(all, 0.3);
    const dots = shown.flatMap(({ rows }) => rows.boxes);
    const hidden = dots.filter(({ x, y }) =>
      covered.some(
        (box) => x > box.x && x < box.x + box.widthPx - 3 && y > box.y && y < box.y + box.heightPx,
      ),
    );
    expect(hidden).toEqual([]);
  });
});
