import type { BedRow } from "./beds.ts";
import type { Lane } from "./lanes.ts";
import type { Scale } from "./scale.ts";

/** What stands in a column [px]: the air of a lane, the ground under it for its words, a bed's heading or the room left of it. */
export type Heights = {
  readonly airPx: number;
  readonly groundPx: number;
  readonly headingPx: number;
  readonly gutterPx: number;
};

/** One bed's lanes in its column, the y [px] of its upper edge with it. */
export type Block = { readonly row: BedRow; readonly lanes: readonly Lane[]; readonly y: number };

/** A column of beds with its own scale of days. */
export type Column = {
  readonly scale: Scale;
  readonly blocks: readonly Block[];
  readonly endsPx: number;
};

/**
 * What columns are filled with: from where to where they go [px], how high things are, and each column's scale, all
 * equally wide.
 */
export type Filling = {
  readonly topPx: number;
  readonly lowest: number;
  readonly heights: Heights;
  readonly scales: readonly Scale[];
};

/** A column that is being filled. */
export type OpenColumn = { readonly scale: Scale; readonly blocks: Block[]; endsPx: number };

/** Puts a bed into the last column, or whole into the next; one too long for any column goes on from one to the next. */
export function fillColumns(
  columns: OpenColumn[],
  { row, lanes }: Omit<Block, "y">,
  filling: Filling,
): void {
  const room = (from: number) => lanesIn(filling.lowest - from, row, filling.heights);
  const last = columns[columns.length - 1];
  const free = last ? room(last.endsPx) : 0;
  const whole = Math.max(1, room(filling.topPx));
  const stays = last && (lanes.length <= free || (lanes.length > whole && free > 0));
  const column = stays ? last : nextColumn(columns, filling);
  const here = lanes.slice(0, stays ? free : whole);
  const y = column.endsPx;
  column.blocks.push({ row, lanes: here.map((lane) => shiftLane(lane, column, filling)), y });
  column.endsPx += rowHeightPx(row, here.length, filling.heights);
  if (here.length < lanes.length)
    fillColumns(columns, { row, lanes: lanes.slice(here.length) }, filling);
}

/** A new column; those beyond the sheet are placed on the last one, because the sheet is too small anyway. */
function nextColumn(columns: OpenColumn[], { topPx, scales }: Filling): OpenColumn {
  const scale = scales[columns.length] ?? scales[scales.length - 1];
  if (!scale) throw new RangeError("a sheet has a column");
  const fresh: OpenColumn = { scale, blocks: [], endsPx: topPx };
  columns.push(fresh);
  return fresh;
}

/** A lane laid out for the first column, moved to its own: all are equally wide. */
function shiftLane(lane: Lane, { scale }: OpenColumn, { scales }: Filling): Lane {
  const alongPx = scale.leftPx - (scales[0]?.leftPx ?? 0);
  return lane.map((each) => ({ ...each, x: each.x + alongPx }));
}

/** Space below each bed [px]. */
const BELOW_PX = 8;

function rowHeightPx({ name }: BedRow, lanes: number, heights: Heights): number {
  const heading = name === "" ? 0 : heights.headingPx;
  return heading + lanes * (heights.airPx + heights.groundPx) + BELOW_PX;
}

/** How many lanes of a bed a height has room for. */
function lanesIn(highPx: number, row: BedRow, heights: Heights): number {
  if (highPx === Number.POSITIVE_INFINITY) return highPx;
  const roomPx = highPx - rowHeightPx(row, 0, heights);
  return Math.max(0, Math.floor(roomPx / (heights.airPx + heights.groundPx) + 1e-9));
}
