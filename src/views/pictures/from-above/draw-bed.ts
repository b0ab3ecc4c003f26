import type { Day } from "../../../base/index.ts";
import type { Bed } from "../../../garden/model/index.ts";
import type { Box } from "../labels.ts";
import { element } from "../svg.ts";
import { type DrawnRows, drawRows, rowsOn, widerFor } from "./draw-rows.ts";
import { type GroundScale, type Outline, STRIP_GAP_PX, sizeOf } from "./ground.ts";
import { type DrawnBlock, nameBlocks } from "./names.ts";
import { type Place, placesIn } from "./places.ts";
import type { BedNote, Mark } from "./sketch.ts";
import { type Standing, standsOn } from "./standing.ts";
import { walls } from "./walls.ts";

/** What a bed is drawn with: what is in it this season, what is marked, the day, its upper left corner and the size of its words [px]. */
export type BedContent = GroundScale & {
  readonly standing: readonly Standing[];
  readonly note: BedNote;
  readonly day: Day;
  readonly outline: Outline;
  readonly at: { readonly x: number; readonly y: number };
  readonly wordsPx: number;
};

/** A bed drawn, how many names stand in it, and those that found no room there, from the upper left on. */
export type DrawnBed = {
  readonly svg: readonly string[];
  readonly named: number;
  readonly unnamed: readonly string[];
};

/** A bed on the ground: its soil and edge, the rows that stand in it on the day, and their names. */
export function drawBed(bed: Bed, content: BedContent): DrawnBed {
  const shown = shownPlaces(bed, content).map((place) => ({ place, rows: rowsOn(place, content) }));
  const strips = boxesOf({ x: 0, y: 0, ...sizeOf(bed) }, content);
  const names = nameBlocks(shown, strips, content);
  return {
    svg: [
      walls(bed, content),
      ...shown.flatMap(({ rows }) => drawRows(rows, names.covered)),
      ...shown.flatMap((block) => drawMark(block, content)),
      ...(names.svg.length > 0 ? [element("g", { class: "in-bed" }, ...names.svg)] : []),
    ],
    named: names.named,
    unnamed: names.left,
  };
}

/** The places of what stands on the day, and of what is marked though it does not stand yet. */
export function shownPlaces(bed: Bed, content: BedContent): readonly Place[] {
  const { standing, note, day } = content;
  const wider = widerFor(content);
  const places = placesIn(standing, sizeOf(bed), { wider, freeCm: note.freeCm ?? 0 });
  return places.filter(({ standing: each }) => standsOn(each, day) || isMarked(each, note));
}

/** Whether a planting is marked. */
export function isMarked({ key }: Pick<Standing, "key">, { marks }: BedNote): boolean {
  return marks.some(({ planting }) => planting === key);
}

/** A stretch of a bed [cm]: x along it, y across it. */
export type Stretch = Record<"x" | "y" | "lengthCm" | "widthCm", number>;

/** Where a stretch of the bed lies in the drawing; one that goes on in the next strip has a box in each. */
export function boxesOf(
  { x, y, lengthCm, widthCm }: Stretch,
  { pxPerCm, outline, at }: Pick<BedContent, "pxPerCm" | "outline" | "at">,
): readonly Box[] {
  const stripCm = outline.widthPx / pxPerCm;
  return Array.from({ length: outline.strips }, (_, strip) => {
    const from = Math.max(x, strip * stripCm);
    const to = Math.min(x + lengthCm, (strip + 1) * stripCm);
    return {
      x: at.x + (from - strip * stripCm) * pxPerCm,
      y: at.y + strip * (outline.stripPx + STRIP_GAP_PX) + y * pxPerCm,
      widthPx: (to - from) * pxPerCm,
      heightPx: widthCm * pxPerCm,
    };
  }).filter(({ widthPx }) => widthPx > 0.05);
}

/** Where a planting's block lies in the drawing. */
export function groundBoxes({ x, y, block }: Place, content: BedContent): readonly Box[] {
  return boxesOf({ x, y, lengthCm: block.lengthCm, widthCm: block.widthCm }, content);
}

/** The mark of a planting: a frame round its block, and for a cover the hatching of what lies over the rows that stand. */
function drawMark({ place, rows }: DrawnBlock, content: BedContent): readonly string[] {
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
