import type { Box } from "../labels.ts";
import { element } from "../svg.ts";
import { type BedContent, groundBoxes } from "./bed-content.ts";
import type { DrawnRows } from "./draw-rows.ts";
import type { DrawnBlock } from "./names.ts";
import type { Mark } from "./sketch.ts";

/** The mark of a planting: a frame round its block, and for a cover the hatching of what lies over the rows that stand. */
export function drawMark({ place, rows }: DrawnBlock, content: BedContent): readonly string[] {
  const mark = content.note.marks.find(({ planting }) => planting === place.standing.key);
  if (!mark) return [];
  const ground = groundBoxes(place, content);
  const boxes = mark.as === "cover" ? ground.flatMap((box) => roundRows(rows, box)) : ground;
  return boxes.flatMap((box) => markIn(box, mark.as));
}

/** The part of a block's ground that has rows in it, from its left to its right. */
function roundRows({ boxes }: DrawnRows, ground: Box): readonly Box[] {
  const here = boxes.filter(({ y }) => y >= ground.y && y <= ground.y + ground.heightPx);
  if (here.length === 0) return [];
  const from = Math.max(ground.x, Math.min(...here.map(({ x }) => x)) - 4);
  const to = Math.max(...here.map(({ x, widthPx }) => x + widthPx)) + 4;
  const end = Math.min(ground.x + ground.widthPx, to);
  return [{ ...ground, x: from, widthPx: end - from }];
}

/** A mark in a box [px]. */
export function markIn(box: Box, as: Mark["as"]): readonly string[] {
  const frame = {
    x: box.x + 1.5,
    y: box.y + 1.5,
    width: Math.max(1, box.widthPx - 3),
    height: Math.max(1, box.heightPx - 3),
    rx: 3,
  };
  return [
    ...(as === "cover" ? [element("rect", { fill: "url(#beds-cover)", ...frame })] : []),
    element("rect", { class: "mark-line", "stroke-width": 2, ...frame }),
  ];
}
