import { expect, test } from "vitest";
import {
  drawCell,
  exactHeight,
  LINE_EM,
  roughHeight,
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

test("a bed has its name and size above and its words below, in the width there is", () => {
  const outline = outlineOf(root.bed, scale, room);
  const cell = { details: root, outline, x: 16, y: 50, bedY: 70, textPx: 172 };
  const svg = drawCell(cell, scale, drawing).join("\n");
  expect(svg).toMatch(/Root bed<\/tspan>.*12 × 4 ft/);
  expect(svg).toContain(">Weed.<");
  const said = [...svg.matchAll(/<text [^>]*y="([\d.]+)"[^>]*class="ink">([^<]+)</g)];
  const ys = said.filter(([, , text]) => /Thin|Weed/.test(text ?? "")).map(([, y]) => Number(y));
  expect(Math.min(...ys)).toBeGreaterThan(70 + outline.heightPx);
});

test("words in less room are higher", () => {
  const height = (textPx: number) => roughHeight(root, textPx, drawing).below;
  expect(height(120)).toBeGreaterThan(height(340));
  expect(height(340)).toBeGreaterThan(2 * LINE_EM * drawing.sheet.smallPx);
});

test("names that find no room in the bed make its words higher than was thought", () => {
  const exact = (pxPerCm: number) =>
    exactHeight(root, 172, { ...drawing, scale: { pxPerCm }, room }).below;
  const rough = roughHeight(root, 172, drawing).below;
  expect(exact(1)).toBe(rough);
  expect(exact(0.12)).toBeGreaterThan(rough);
});
