import { describe, expect, test } from "vitest";
import { bedRowsOf } from "../../../src/views/pictures/beds.ts";
import { layOutColumns, type PictureLayout } from "../../../src/views/pictures/layout.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import type { PictureForm } from "../../../src/views/pictures/sketch.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, on, sketchOf } from "./drawn.ts";

const days = { from: on("2027-04-01"), to: on("2027-11-30") };
const room = () => ({ topPx: 120, footPx: 60 });
const set = (text: string, form: PictureForm): PictureLayout =>
  layOutColumns(sheetOf(form), { rows: bedRowsOf(sketchOf(text)), days, room });

describe("on a phone", () => {
  test("beds stand in one column, one below the other without touching", () => {
    const { columns, heights } = set(QUARRY, "phone");
    expect(columns.length).toBe(1);
    const blocks = columns[0]?.blocks ?? [];
    blocks.slice(1).forEach(({ y }, i) => {
      const before = blocks[i];
      const lanes = before?.lanes.length ?? 0;
      expect(y).toBeGreaterThanOrEqual(
        (before?.y ?? 0) + lanes * (heights.airPx + heights.groundPx),
      );
    });
  });
});

describe("on a page", () => {
  test("few beds have one column with their names beside it, and all the air there is", () => {
    const { columns, heights, sheet } = set(QUARRY, "page");
    expect([columns.length, heights.headingPx]).toEqual([1, 0]);
    expect(heights.gutterPx).toBeGreaterThan(0);
    expect(columns[0]?.scale.leftPx).toBe(sheet.marginPx + heights.gutterPx);
    expect(sheet.widthPx).toBe(1123);
  });

  test("many stand in columns with every bed once, and nothing below the foot", () => {
    const { columns, sheet } = set(GARDENS["sixty plantings in twelve beds"] ?? "", "page");
    expect(columns.length).toBeGreaterThan(1);
    expect(columns.flatMap(({ blocks }) => blocks.map(({ row }) => row.name)).length).toBe(12);
    for (const { endsPx } of columns)
      expect(endsPx).toBeLessThanOrEqual((sheet.heightPx ?? 0) - 60 - sheet.marginPx / 2);
    expect(sheet.widthPx / (sheet.heightPx ?? 1)).toBeCloseTo(Math.SQRT2, 2);
  });

  test("a bed too long for a column goes on in the next, each of its plantings once", () => {
    const crops = Array.from({ length: 60 }, (_, i) => `  - carrot: kind ${i + 1}\n`).join("");
    const { columns, sheet } = set(
      `garden: Long\nyear: 2027\nplace:\n  clock: Europe/Berlin\n  last frost: about 6 May\n  first frost: about 2 Oct\ncrops:\n${crops}`,
      "page",
    );
    expect(columns.length).toBe(3);
    const plants = columns.flatMap(({ blocks, scale }) =>
      blocks.flatMap(({ lanes }) =>
        lanes.flat().map(({ plant, x }) => {
          expect(x).toBeGreaterThanOrEqual(scale.leftPx);
          return plant.planting.key;
        }),
      ),
    );
    expect([plants.length, new Set(plants).size]).toEqual([60, 60]);
    expect(sheet.widthPx).toBeLessThan(2000);
  });
});
