import { type Box, clash } from "../labels.ts";
import { element, tenth } from "../svg.ts";
import { type BedContent, boxesOf } from "./bed-content.ts";
import type { RowBlock } from "./block.ts";
import { STRIP_GAP_PX } from "./ground.ts";
import type { Place, WiderBlock } from "./places.ts";
import { type RowPiece, rowPiecesOn } from "./rows.ts";

/** Nearer than this [px] plants are drawn as one line. */
const LEAST_APART_PX = 2.6;

/** A plant's dot: its part of the distance to the next, and the most and the least it is across [px]. Source: house rule. */
const [DOT_SHARE, LARGEST_DOT_PX, SMALLEST_DOT_PX] = [0.42, 7, 1.5];

/** A row of seed drawn as a line, and space between any two rows [px]. Source: house rule. */
const [LINE_PX, BETWEEN_PX] = [1.2, 1.6];

/** Height of a name with a little air [of its size]. */
const NAME_EM = 1.16;

/** How thick the rows of a block are drawn [px]; `apart` 0 where its plants are not told from each other. */
function thicknessOf(
  { apartCm }: RowBlock,
  pxPerCm: number,
): { readonly apart: number; readonly px: number } {
  const apart = (apartCm ?? 0) * pxPerCm;
  if (apart < LEAST_APART_PX) return { apart: 0, px: LINE_PX };
  return {
    apart,
    px: Math.min(LARGEST_DOT_PX, Math.max(SMALLEST_DOT_PX, apart * DOT_SHARE)),
  };
}

type Sizes = Pick<BedContent, "pxPerCm" | "wordsPx">;

/** The least height of the rows of a block [px]. */
const rowsPx = (block: RowBlock, pxPerCm: number) =>
  block.rows * (thicknessOf(block, pxPerCm).px + BETWEEN_PX);

/** Widths a block would rather have: for its rows, for a name over them where they are sown, for a name above them. */
export function widerFor({ pxPerCm, wordsPx }: Sizes): WiderBlock {
  const namePx = wordsPx * NAME_EM;
  return ({ amount }, block) => {
    const rows = rowsPx(block, pxPerCm);
    const over = amount?.kind === "plants" ? rows : Math.max(namePx, rows);
    return [rows, over, namePx + rows].map((px) => px / pxPerCm);
  };
}

/** Room above the rows of a block for its name [px]; 0 where there is none. */
export function headOf(block: RowBlock, { pxPerCm, wordsPx }: Sizes): number {
  const namePx = wordsPx * NAME_EM;
  const heightPx = block.widthCm * pxPerCm;
  return heightPx + 1e-6 >= namePx + rowsPx(block, pxPerCm) ? namePx : 0;
}

/** What is drawn of a planting [px]: a box for each plant, or for each stretch of a row that is drawn as a line. */
export type DrawnRows = {
  readonly boxes: readonly Box[];
  /** The same row by row, from its first plant to its last. */
  readonly extents: readonly Box[];
  readonly asDots: boolean;
  readonly px: number;
};

/** A planting's block with what is drawn of it. */
export type DrawnBlock = { readonly place: Place; readonly rows: DrawnRows };

/** The rows that stand of a planting on the day. */
export function rowsOn(place: Place, content: BedContent): DrawnRows {
  const { apart, px } = thicknessOf(place.block, content.pxPerCm);
  const pieces = rowPiecesOn(place, content.day, headOf(place.block, content) / content.pxPerCm);
  const boxes = pieces.flatMap((piece) =>
    apart > 0 ? dotsOf(place, piece, { content, px }) : linesOf(piece, content),
  );
  return { boxes, extents: extentsOf(boxes), asDots: apart > 0, px };
}

/** Boxes of one height that follow each other, as one. */
function extentsOf(boxes: readonly Box[]): readonly Box[] {
  const extents: Box[] = [];
  for (const box of boxes) {
    const last = extents.at(-1);
    if (last && last.y === box.y && box.x >= last.x)
      extents[extents.length - 1] = { ...last, widthPx: box.x + box.widthPx - last.x };
    else extents.push(box);
  }
  return extents;
}

/** The same as it is drawn: where a name lies on it, it is left out. */
export function drawRows(rows: DrawnRows, names: readonly Box[]): readonly string[] {
  const { boxes, asDots, px } = rows;
  const free = asDots
    ? boxes.filter((box) => !names.some((name) => clash(name, box)))
    : boxes.flatMap((box) => besides(box, names));
  if (free.length === 0) return [];
  const look = { class: "plant-line", "stroke-width": px, "stroke-linecap": "round" };
  return [element("path", { ...look, d: free.map((box) => pathOf(box, asDots)).join("") })];
}

/** A stretch of a row as it is drawn in the bed's strips. */
function linesOf({ x1, x2, y }: RowPiece, content: BedContent): readonly Box[] {
  const stretch = { x: x1, y, lengthCm: x2 - x1, widthCm: 0 };
  return boxesOf(stretch, content).map((box) => ({
    x: box.x + 2,
    y: box.y - LINE_PX / 2,
    widthPx: Math.max(0.1, box.widthPx - 4),
    heightPx: LINE_PX,
  }));
}

/** A dot is a line of no length with round ends. */
function pathOf({ x, y, widthPx, heightPx }: Box, isDot: boolean): string {
  const middle = tenth(y + heightPx / 2);
  if (isDot) return `M${tenth(x + widthPx / 2)} ${middle}h0`;
  return `M${tenth(x)} ${middle}H${tenth(x + widthPx)}`;
}

/** The plants of a piece of a row, each as the box round its dot. */
function dotsOf(
  { block, x: left }: Pick<Place, "block" | "x">,
  { x1, x2, y }: RowPiece,
  { content, px }: { readonly content: BedContent; readonly px: number },
): readonly Box[] {
  const apartCm = block.apartCm ?? 1;
  const first = Math.ceil((x1 - left) / apartCm - 0.5 - 1e-6);
  const last = Math.floor((x2 - left) / apartCm - 0.5 + 1e-6);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const at = pointOf(left + (first + i + 0.5) * apartCm, y, content);
    return { x: at.x - px / 2, y: at.y - px / 2, widthPx: px, heightPx: px };
  });
}

function pointOf(x: number, y: number, { pxPerCm, outline, at }: BedContent) {
  const stripCm = outline.widthPx / pxPerCm;
  const strip = Math.min(outline.strips - 1, Math.floor(x / stripCm));
  return {
    x: at.x + (x - strip * stripCm) * pxPerCm,
    y: at.y + strip * (outline.stripPx + STRIP_GAP_PX) + y * pxPerCm,
  };
}

/** What is left of a line beside the names that lie on it. */
function besides(line: Box, names: readonly Box[]): readonly Box[] {
  let rest: readonly Box[] = [line];
  for (const name of names)
    rest = rest.flatMap((piece) => {
      if (!clash(name, piece)) return [piece];
      const [from, to] = [piece.x, piece.x + piece.widthPx];
      return [
        { ...piece, widthPx: name.x - from },
        { ...piece, x: name.x + name.widthPx, widthPx: to - name.x - name.widthPx },
      ].filter(({ widthPx }) => widthPx > 1);
    });
  return rest;
}
