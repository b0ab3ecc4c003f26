import type { Point } from "../curve.ts";
import type { Box } from "../labels.ts";
import { type Attributes, element } from "../svg.ts";
import { type BedContent, groundBoxes } from "./bed-content.ts";
import type { DrawnBlock } from "./draw-rows.ts";
import type { Mark } from "./sketch.ts";

/** The mark of a planting: a frame round its block, and for a cover the hatching of what lies over the rows that stand. */
export function drawMark(block: DrawnBlock, content: BedContent): readonly string[] {
  const mark = markOf(block, content);
  return mark ? markBoxes(block, content).flatMap((box) => markIn(box, mark.as)) : [];
}

const markOf = ({ place }: DrawnBlock, { note }: BedContent): Mark | undefined =>
  note.marks.find(({ planting }) => planting === place.standing.key);

/** Where a planting's mark lies [px]; nothing where it has none. */
export function markBoxes(block: DrawnBlock, content: BedContent): readonly Box[] {
  const mark = markOf(block, content);
  if (!mark) return [];
  const ground = groundBoxes(block.place, content);
  return mark.as === "cover" ? ground.flatMap((box) => roundRows(block, box, content)) : ground;
}

/** The part of a block's ground that has rows in it: from its left, or from the first row that does not begin there, to its right. */
function roundRows(
  { place, rows }: DrawnBlock,
  ground: Box,
  { pxPerCm }: BedContent,
): readonly Box[] {
  const here = rows.extents.filter(({ y }) => y >= ground.y && y <= ground.y + ground.heightPx);
  if (here.length === 0) return [];
  const first = Math.min(...here.map(({ x }) => x));
  const atLeft = first - ground.x < Math.max(4, (place.block.apartCm ?? 0) * pxPerCm);
  const from = atLeft ? ground.x : first - RIM_PX;
  const last = Math.max(...here.map(({ x, widthPx }) => x + widthPx)) + RIM_PX;
  const end = Math.min(ground.x + ground.widthPx, last);
  return [{ ...ground, x: from, widthPx: end - from }];
}

/** Air round rows in a mark, and how thick its frame is [px]. */
const [RIM_PX, FRAME_PX] = [4, 2];

/** A mark in a box [px]. */
function markIn(box: Box, as: Mark["as"]): readonly string[] {
  const frame = {
    x: box.x + 1.5,
    y: box.y + 1.5,
    width: Math.max(1, box.widthPx - 3),
    height: Math.max(1, box.heightPx - 3),
    rx: 3,
  };
  return marked(as, (look) => element("rect", { ...look, ...frame }));
}

/** A mark round a bag [px]. */
export function markRound({ x, y }: Point, radiusPx: number, as: Mark["as"]): readonly string[] {
  return marked(as, (look) => element("circle", { ...look, cx: x, cy: y, r: radiusPx }));
}

function marked(as: Mark["as"], drawn: (look: Attributes) => string): readonly string[] {
  const frame = drawn({ class: "mark-line", "stroke-width": FRAME_PX });
  return as === "cover" ? [drawn({ fill: `url(#${COVER})` }), frame] : [frame];
}

/** The hatching's name. */
const COVER = "beds-cover";

/** The hatching of a cover, for a drawing that has one. */
export function hatching(): string {
  const tile = { id: COVER, width: 7, height: 7, patternUnits: "userSpaceOnUse" };
  const look = { class: "mark-line", "stroke-width": 0.8, "stroke-opacity": "0.7" };
  return element("pattern", tile, element("path", { ...look, d: "M-1 8L8 -1M-1 1L1 -1M6 8L8 6" }));
}
