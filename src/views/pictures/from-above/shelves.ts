import type { BedDetails } from "./details.ts";
import { type GroundScale, type Outline, outlineOf, type ShelfRoom } from "./ground.ts";

/** A bed as it is drawn with its words, and the height of those below it [px]. */
export type CellBody = { readonly svg: readonly string[]; readonly belowPx: number };

/** A bed in its place on the sheet [px]; `textPx` is the width of its words, `bedY` the upper edge of its ground. */
export type Cell = {
  readonly details: BedDetails;
  readonly outline: Outline;
  readonly x: number;
  readonly y: number;
  readonly bedY: number;
  readonly textPx: number;
};

/** The beds set out in shelves, row by row in their order, as they are drawn, and how far down they reach [px]. */
export type Shelves = GroundScale & {
  readonly cells: readonly Cell[];
  readonly svg: readonly string[];
  readonly endsPx: number;
};

/**
 * What shelves are filled with: the room, its upper left corner, the least width of words, how high the words above a bed are
 * in the width there is for them, and the bed itself in its place [px].
 */
export type Shelving = ShelfRoom & {
  readonly x: number;
  readonly y: number;
  readonly wordsPx: number;
  readonly heightAbove: (details: BedDetails, textPx: number) => number;
  readonly bodyOf: (cell: Cell, scale: GroundScale) => CellBody;
};

type Row = { readonly details: BedDetails; readonly outline: Outline; readonly leastPx: number };

/** Beds side by side as long as they fit, in their order, at one scale; what is left of a shelf's width goes to the words. */
export function shelvesAt(
  beds: readonly BedDetails[],
  scale: GroundScale,
  shelving: Shelving,
): Shelves {
  const cells: Cell[] = [];
  const svg: string[] = [];
  let y = shelving.y;
  for (const row of rowsOf(beds, scale, shelving)) {
    const shelf = shelfOf(row, y, { scale, shelving });
    cells.push(...shelf.cells);
    svg.push(...shelf.svg);
    y = shelf.endsPx + BELOW_PX;
  }
  return { ...scale, cells, svg, endsPx: y };
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
): Omit<Shelves, "pxPerCm"> {
  const { widthPx, gapPx, heightAbove, bodyOf } = shelving;
  const used = row.reduce((sum, { leastPx }) => sum + leastPx + gapPx, -gapPx);
  const morePx = (widthPx - used) / row.length;
  const above = row.map(({ details, leastPx }) => heightAbove(details, leastPx + morePx));
  const bedY = y + Math.max(...above);
  let x = shelving.x;
  const cells = row.map(({ details, outline, leastPx }): Cell => {
    const cell = { details, outline, x, y, bedY, textPx: leastPx + morePx };
    x += leastPx + morePx + gapPx;
    return cell;
  });
  const bodies = cells.map((cell) => bodyOf(cell, scale));
  const ends = cells.map(({ outline }, i) => bedY + outline.heightPx + (bodies[i]?.belowPx ?? 0));
  return { cells, svg: bodies.flatMap(({ svg }) => svg), endsPx: Math.max(...ends) };
}
