import type { Day } from "../days/day.ts";
import type { Row } from "./beds.ts";
import { type Lane, lanesOf } from "./lanes.ts";
import type { Scale } from "./scale.ts";
import { marginsOf, type Sheet } from "./sheet.ts";

/** What stands in a column [px]: the air of a lane, the ground under it for its words, a bed's heading or the room left of it. */
export type Heights = {
  readonly airPx: number;
  readonly groundPx: number;
  readonly headingPx: number;
  readonly gutterPx: number;
};

/** One bed's lanes in its column, the y [px] of its upper edge with it. */
export type Block = { readonly row: Row; readonly lanes: readonly Lane[]; readonly y: number };

/** A column of beds with its own scale of days. */
export type Column = {
  readonly scale: Scale;
  readonly blocks: readonly Block[];
  readonly endsPx: number;
};

/** The beds set out on a sheet. */
export type Layout = {
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  readonly heights: Heights;
};

/** What is to be set out: the beds, the days to show, and the room that head and foot leave [px] on a sheet of a width. */
export type Wanted = {
  readonly rows: readonly Row[];
  readonly days: { readonly from: Day; readonly to: Day };
  readonly room: (sheet: Sheet) => { readonly topPx: number; readonly footPx: number };
};

/** Least and most height of the air in a lane [px]: small enough for a club's garden, never so high that it looks empty; `alone`: the least in a page's only column. */
const AIR_PX = { phone: 56, page: { least: 14, most: 160 }, alone: 32 } as const;

/** Room for a bed's name left of its lanes [px]. */
const GUTTER_PX = 118;

/** Space between columns [px], and columns at the most. */
const [BETWEEN_PX, MOST_COLUMNS] = [36, 3];

/** Everything set out on the sheet: on a phone in one column, on a page in as few as fit; where none do, the page's lines become finer. */
export function layOut(sheet: Sheet, wanted: Wanted): Layout {
  if (sheet.heightPx === null) return setOut(sheet, wanted, { columns: 1, airPx: AIR_PX.phone });
  for (let zoom = 1; ; zoom *= 1.08) {
    const { widthPx, heightPx } = sheet;
    const finer = {
      ...sheet,
      widthPx: Math.round(widthPx * zoom),
      heightPx: Math.round(heightPx * zoom),
    };
    for (let columns = 1; columns <= MOST_COLUMNS; columns++) {
      const fit = highest(finer, wanted, columns);
      if (fit) return fit;
    }
  }
}

/** So many columns with the most air that still fits the sheet; null where even the least does not. */
function highest(sheet: Sheet, wanted: Wanted, columns: number): Layout | null {
  const { least, most } = AIR_PX.page;
  const lowest = lowestOf(sheet, wanted);
  const tried = (airPx: number): Layout | null => {
    const layout = setOut(sheet, wanted, { columns, airPx });
    const fits = layout.columns.length <= columns;
    return fits && layout.columns.every(({ endsPx }) => endsPx <= lowest) ? layout : null;
  };
  let best = tried(columns === 1 ? AIR_PX.alone : least);
  while (best && best.heights.airPx < most) {
    const higher = tried(best.heights.airPx + 1);
    if (!higher) break;
    best = higher;
  }
  return best;
}

/** The y [px] down to which beds may reach. */
function lowestOf(sheet: Sheet, { room }: Wanted): number {
  if (sheet.heightPx === null) return Number.POSITIVE_INFINITY;
  return sheet.heightPx - sheet.marginPx / 2 - room(sheet).footPx;
}

type Tried = { readonly columns: number; readonly airPx: number };

/** A page's only column has room for the beds' names at its left; elsewhere they stand above their lanes. */
function heightsOf(sheet: Sheet, { columns, airPx }: Tried): Heights {
  const beside = sheet.form === "page" && columns === 1;
  const tight = sheet.form === "page" && columns > 1;
  return {
    airPx,
    groundPx: sheet.namePx + (tight ? 11 : 14),
    headingPx: beside ? 0 : sheet.namePx + (tight ? 9 : 14),
    gutterPx: beside ? GUTTER_PX : 0,
  };
}

function setOut(sheet: Sheet, wanted: Wanted, tried: Tried): Layout {
  const heights = heightsOf(sheet, tried);
  const scales = scalesOf(sheet, wanted.days, { ...tried, ...heights });
  const filling: Filling = {
    ...wanted.room(sheet),
    lowest: lowestOf(sheet, wanted),
    heights,
    scales,
  };
  const columns: Open[] = [];
  const [model] = scales;
  for (const row of model ? wanted.rows : [])
    if (model) fill(columns, { row, lanes: lanesOf(row, model, sheet) }, filling);
  return { sheet, columns, heights };
}

type Filling = {
  readonly topPx: number;
  readonly lowest: number;
  readonly heights: Heights;
  readonly scales: readonly Scale[];
};

type Open = { readonly scale: Scale; readonly blocks: Block[]; endsPx: number };

/** Puts a bed into the last column, or whole into the next; one too long for any column goes on from one to the next. */
function fill(columns: Open[], { row, lanes }: Omit<Block, "y">, filling: Filling): void {
  const room = (from: number) => lanesIn(filling.lowest - from, row, filling.heights);
  const last = columns[columns.length - 1];
  const free = last ? room(last.endsPx) : 0;
  const whole = Math.max(1, room(filling.topPx));
  const stays = last && (lanes.length <= free || (lanes.length > whole && free > 0));
  const column = stays ? last : nextColumn(columns, filling);
  const here = lanes.slice(0, stays ? free : whole);
  const y = column.endsPx;
  column.blocks.push({ row, lanes: here.map((lane) => moved(lane, column, filling)), y });
  column.endsPx += highOf(row, here.length, filling.heights);
  if (here.length < lanes.length) fill(columns, { row, lanes: lanes.slice(here.length) }, filling);
}

/** A fresh column; those beyond the sheet stand where the last one does, since the sheet is then too small anyway. */
function nextColumn(columns: Open[], { topPx, scales }: Filling): Open {
  const scale = scales[columns.length] ?? scales[scales.length - 1];
  if (!scale) throw new RangeError("a sheet has a column");
  const fresh: Open = { scale, blocks: [], endsPx: topPx };
  columns.push(fresh);
  return fresh;
}

/** A lane laid out for the first column, moved to its own: all are equally wide. */
function moved(lane: Lane, { scale }: Open, { scales }: Filling): Lane {
  const alongPx = scale.leftPx - (scales[0]?.leftPx ?? 0);
  return lane.map((each) => ({ ...each, x: each.x + alongPx }));
}

/** Space below each bed [px]. */
const BELOW_PX = 8;

function highOf({ name }: Row, lanes: number, heights: Heights): number {
  const heading = name === "" ? 0 : heights.headingPx;
  return heading + lanes * (heights.airPx + heights.groundPx) + BELOW_PX;
}

/** How many lanes of a bed a height has room for. */
function lanesIn(highPx: number, row: Row, heights: Heights): number {
  if (highPx === Number.POSITIVE_INFINITY) return highPx;
  const roomPx = highPx - highOf(row, 0, heights);
  return Math.max(0, Math.floor(roomPx / (heights.airPx + heights.groundPx) + 1e-9));
}

function scalesOf(
  sheet: Sheet,
  days: Wanted["days"],
  { columns, gutterPx }: { readonly columns: number; readonly gutterPx: number },
): readonly Scale[] {
  const { leftPx, rightPx } = marginsOf(sheet);
  const widthPx = (rightPx - leftPx - (columns - 1) * BETWEEN_PX) / columns;
  return Array.from({ length: columns }, (_, i) => {
    const left = leftPx + i * (widthPx + BETWEEN_PX);
    return { ...days, leftPx: left + gutterPx, rightPx: left + widthPx };
  });
}
