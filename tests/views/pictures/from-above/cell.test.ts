import { expect, test } from "vitest";
import {
  drawCell,
  heightAbove,
  LINE_EM,
  roughCell,
} from "../../../../src/views/pictures/from-above/cell.ts";
import { detailsOf } from "../../../../src/views/pictures/from-above/details.ts";
import { outlineOf } from "../../../../src/views/pictures/from-above/ground.ts";
import { sheetOf } from "../../../../src/views/pictures/sheet.ts";
import { QUARRY } from "../../../gardens.ts";
import { bedsSketchOf } from "./beds.ts";

const lines = ["Thin beets to two inches, and eat what you take out.", "Weed."];
const notes = {
  text: "",
  beds: [{ bed: "root-bed", lines, marks: [], freeCm: null }],
  alone: true,
};
const sketch = bedsSketchOf(QUARRY, "2027-06-20", { notes });
const drawing = { sheet: sheetOf("phone"), sketch };
const [root] = detailsOf(sketch).beds;
if (!root) throw new Error("no root bed");
const room = { widthPx: 358, gapPx: 14 };
const scale = { pxPerCm: 0.47 };

const cellAt = (textPx: number, pxPerCm = scale.pxPerCm) => ({
  details: root,
  outline: outlineOf(root.bed, { pxPerCm }, room),
  ...{ x: 16, y: 50, bedY: 70, textPx },
});

test("a bed has its name and size above and its words below, in the width there is", () => {
  const cell = cellAt(172);
  const svg = drawCell(cell, scale, drawing).svg.join("\n");
  expect(svg).toMatch(/Root bed<\/tspan>.*12 × 4 ft/);
  expect(svg).toContain(">Weed.<");
  const said = [...svg.matchAll(/<text [^>]*y="([\d.]+)"[^>]*class="ink">([^<]+)</g)];
  const ys = said.filter(([, , text]) => /Thin|Weed/.test(text ?? "")).map(([, y]) => Number(y));
  expect(Math.min(...ys)).toBeGreaterThan(70 + cell.outline.heightPx);
});

test("words in less room are higher, above a bed and below it", () => {
  const below = (textPx: number) => roughCell(cellAt(textPx), drawing).belowPx;
  expect(below(120)).toBeGreaterThan(below(340));
  expect(below(340)).toBeGreaterThan(2 * LINE_EM * drawing.sheet.smallPx);
  expect(heightAbove(root, 60, drawing)).toBeGreaterThan(heightAbove(root, 340, drawing));
});

test("names that find no room in the bed make its words higher than was thought", () => {
  const drawn = (pxPerCm: number) => drawCell(cellAt(172, pxPerCm), { pxPerCm }, drawing).belowPx;
  const rough = roughCell(cellAt(172), drawing).belowPx;
  expect(drawn(1)).toBe(rough);
  expect(drawn(0.12)).toBeGreaterThan(rough);
});
