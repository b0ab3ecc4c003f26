import type { Day } from "../../../base/index.ts";
import type { Box } from "../labels.ts";
import { type GroundScale, type Outline, STRIP_GAP_PX } from "./ground.ts";
import type { Place } from "./places.ts";
import type { BedNote } from "./sketch.ts";
import type { Standing } from "./standing.ts";

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

/** Whether a planting is marked. */
export function isMarked({ key }: Pick<Standing, "key">, { marks }: BedNote): boolean {
  return marks.some(({ planting }) => planting === key);
}
