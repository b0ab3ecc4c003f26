import type { BedDetails } from "./details.ts";
import { type GroundScale, type Outline, outlineOf, type ShelfRoom } from "./ground.ts";

/** The height of a bed's words above it and below it [px]. */
export type WordsHeight = { readonly above: number; readonly below: number };

/** A bed in its place on the sheet [px]; `textPx` is the width of its words, `bedY` the upper edge of its ground. */
export type Cell = {
  readonly details: BedDetails;
  readonly outline: Outline;
  readonly x: number;
  readonly y: number;
  readonly bedY: number;
  readonly textPx: number;
};

/** The beds set out in shelves, row by row in their order, and how far down they reach [px]. */
export type Shelves = GroundScale & { readonly cells: readonly Cell[]; readonly endsPx: number };

/** What shelves are filled with: the room, its upper left corner, the least width of words, and how high a bed's words are [px]. */
export type Shelving = ShelfRoom & {
  readonly x: number;
  readonly y: number;
  readonly wordsPx: number;
  readonly heightsOf: WordsHeights;
};

/** How high the words of a bed are in the width there is for them [px], at a scale. */
export type WordsHeights = (details: BedDetails, textPx: number, scale: GroundScale) => WordsHeight;

type Row = { readonly details: BedDetails; readonly outline: Outline; readonly leastPx: number };

/** Beds side by side as long as they fit, in their order, at one scale; what is left of a shelf's width goes to the words. */
export function shelvesAt(
  beds: readonly BedDetails[],
  scale: GroundScale,
  shelving: Shelving,
): Shelves {
  const cells: Cell[] = [];
  let y = shelving.y;
  for (const row of rowsOf(beds, scale, shelving)) {
    const { shelf, endsPx } = shelfOf(row, y, { scale, shelving });
    cells.push(...shelf);
    y = endsPx + BELOW_PX;
  }
  return { ...scale, cells, endsPx: y };
}

/** Space below a shelf [px]. */
const BELOW_PX = 16;

function rowsOf(
  beds: readonly BedDetails[],
  scale: GroundScale,
  shelving: Shelving,
): readonly (readonly Row[])[] {
  const { widthPx, gapPx, wordsPx } = shelving;
  const rows: Row[][] = [];
  let free = 0;
  for (const details of beds) {
    const outline = outlineOf(details.bed, scale, shelving);
    const leastPx = Math.min(widthPx, Math.max(outline.widthPx, wordsPx));
    const last = rows[rows.length - 1];
    if (last && leastPx + gapPx <= free + 1e-6) {
      last.push({ details, outline, leastPx });
      free -= leastPx + gapPx;
    } else {
      rows.push([{ details, outline, leastPx }]);
      free = widthPx - leastPx;
    }
  }
  return rows;
}

type ShelfContent = { readonly scale: GroundScale; readonly shelving: Shelving };

function shelfOf(
  row: readonly Row[],
  y: number,
  { scale, shelving }: ShelfContent,
): { readonly shelf: readonly Cell[]; readonly endsPx: number } {
  const { widthPx, gapPx, heightsOf } = shelving;
  const used = row.reduce((sum, { leastPx }) => sum + leastPx + gapPx, -gapPx);
  const morePx = (widthPx - used) / row.length;
  const heights = row.map(({ details, leastPx }) => heightsOf(details, leastPx + morePx, scale));
  const bedY = y + Math.max(...heights.map(({ above }) => above));
  let x = shelving.x;
  const shelf = row.map(({ details, outline, leastPx }) => {
    const cell = { details, outline, x, y, bedY, textPx: leastPx + morePx };
    x += leastPx + morePx + gapPx;
    return cell;
  });
  const endsPx = Math.max(
    ...row.map(({ outline }, i) => bedY + outline.heightPx + (heights[i]?.below ?? 0)),
  );
  return { shelf, endsPx };
}
