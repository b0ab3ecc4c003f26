import type { DaySpan } from "../../base/index.ts";
import type { BedRow } from "./beds.ts";
import {
  type Column,
  type Filling,
  fillColumns,
  type Heights,
  type OpenColumn,
} from "./fill-columns.ts";
import { lanesOf } from "./lanes.ts";
import type { Scale } from "./scale.ts";
import { marginsOf, type PictureSheet } from "./sheet.ts";

/** The beds set out on a sheet. */
export type PictureLayout = {
  readonly sheet: PictureSheet;
  readonly columns: readonly Column[];
  readonly heights: Heights;
};

/** What is to be set out: the beds, the days to show, and the room that head and foot leave [px] on a sheet of a width. */
export type LayoutContent = {
  readonly rows: readonly BedRow[];
  readonly days: DaySpan;
  readonly room: (sheet: PictureSheet) => { readonly topPx: number; readonly footPx: number };
};

/** Least and most height of the air in a lane [px]: small enough for a club's garden, never so high that it looks empty; `alone`: the least in a page's only column. */
const AIR_PX = { phone: 56, page: { least: 14, most: 160 }, alone: 32 } as const;

/** Room for a bed's name left of its lanes [px]. */
const GUTTER_PX = 118;

/** Space between columns [px], and columns at the most. */
const [BETWEEN_PX, MOST_COLUMNS] = [36, 3];

/** Everything set out on the sheet: on a phone in one column, on a page in as few as fit; where none do, the page's lines become finer. */
export function layOutColumns(sheet: PictureSheet, content: LayoutContent): PictureLayout {
  if (sheet.heightPx === null)
    return arrangeColumns(sheet, content, { columns: 1, airPx: AIR_PX.phone });
  for (let zoom = 1; ; zoom *= 1.08) {
    const { widthPx, heightPx } = sheet;
    const finer = {
      ...sheet,
      widthPx: Math.round(widthPx * zoom),
      heightPx: Math.round(heightPx * zoom),
    };
    for (let columns = 1; columns <= MOST_COLUMNS; columns++) {
      const fit = tallestLayout(finer, content, columns);
      if (fit) return fit;
    }
  }
}

/** So many columns with the most air that still fits the sheet; null where even the least does not. */
function tallestLayout(
  sheet: PictureSheet,
  content: LayoutContent,
  columns: number,
): PictureLayout | null {
  const { least, most } = AIR_PX.page;
  const lowest = lowestOf(sheet, content);
  const trial = (airPx: number): PictureLayout | null => {
    const layout = arrangeColumns(sheet, content, { columns, airPx });
    const fits = layout.columns.length <= columns;
    return fits && layout.columns.every(({ endsPx }) => endsPx <= lowest) ? layout : null;
  };
  let best = trial(columns === 1 ? AIR_PX.alone : least);
  while (best && best.heights.airPx < most) {
    const higher = trial(best.heights.airPx + 1);
    if (!higher) break;
    best = higher;
  }
  return best;
}

/** The y [px] down to which beds may reach. */
function lowestOf(sheet: PictureSheet, { room }: LayoutContent): number {
  if (sheet.heightPx === null) return Number.POSITIVE_INFINITY;
  return sheet.heightPx - sheet.marginPx / 2 - room(sheet).footPx;
}

type ColumnTrial = { readonly columns: number; readonly airPx: number };

/** A page's only column has room for the beds' names at its left; elsewhere they stand above their lanes. */
function heightsOf(sheet: PictureSheet, { columns, airPx }: ColumnTrial): Heights {
  const beside = sheet.form === "page" && columns === 1;
  const tight = sheet.form === "page" && columns > 1;
  return {
    airPx,
    groundPx: sheet.namePx + (tight ? 11 : 14),
    headingPx: beside ? 0 : sheet.namePx + (tight ? 9 : 14),
    gutterPx: beside ? GUTTER_PX : 0,
  };
}

function arrangeColumns(
  sheet: PictureSheet,
  content: LayoutContent,
  trial: ColumnTrial,
): PictureLayout {
  const heights = heightsOf(sheet, trial);
  const scales = scalesOf(sheet, content.days, { ...trial, ...heights });
  const filling: Filling = {
    ...content.room(sheet),
    lowest: lowestOf(sheet, content),
    heights,
    scales,
  };
  const columns: OpenColumn[] = [];
  const [model] = scales;
  for (const row of model ? content.rows : [])
    if (model) fillColumns(columns, { row, lanes: lanesOf(row, model, sheet) }, filling);
  return { sheet, columns, heights };
}

function scalesOf(
  sheet: PictureSheet,
  days: LayoutContent["days"],
  { columns, gutterPx }: { readonly columns: number; readonly gutterPx: number },
): readonly Scale[] {
  const { leftPx, rightPx } = marginsOf(sheet);
  const widthPx = (rightPx - leftPx - (columns - 1) * BETWEEN_PX) / columns;
  return Array.from({ length: columns }, (_, i) => {
    const left = leftPx + i * (widthPx + BETWEEN_PX);
    return { ...days, leftPx: left + gutterPx, rightPx: left + widthPx };
  });
}
