import { cutTo, wrapped } from "./measure.ts";
import type { PictureForm } from "./sketch.ts";
import { type TextRun, type TextSpot, textLine } from "./svg.ts";

/** A sheet to draw on [px]: a phone's grows downwards as it needs, a page keeps the shape of A4 on its side. */
export type PictureSheet = {
  readonly form: PictureForm;
  readonly widthPx: number;
  /** Null: as high as what is drawn. */
  readonly heightPx: number | null;
  readonly marginPx: number;
  /** Sizes of the type; none smaller than 12 on a phone. */
  readonly titlePx: number;
  readonly namePx: number;
  readonly smallPx: number;
};

const PHONE: PictureSheet = {
  form: "phone",
  widthPx: 390,
  heightPx: null,
  marginPx: 16,
  titlePx: 23,
  namePx: 14,
  smallPx: 12.5,
};

/** A4 on its side at 96 px an inch. */
const PAGE: PictureSheet = {
  form: "page",
  widthPx: 1123,
  heightPx: 794,
  marginPx: 44,
  titlePx: 30,
  namePx: 15,
  smallPx: 13.5,
};

/** The sheet of a form. */
export function sheetOf(form: PictureForm): PictureSheet {
  return form === "phone" ? PHONE : PAGE;
}

/** The x [px] of the sheet's left and right margin. */
export function marginsOf({ widthPx, marginPx }: PictureSheet): {
  readonly leftPx: number;
  readonly rightPx: number;
} {
  return { leftPx: marginPx, rightPx: widthPx - marginPx };
}

/** Lines set one under the other, with the y [px] behind the last. */
export type TextBlock = {
  readonly svg: readonly string[];
  readonly endsPx: number;
};

/** A paragraph wrapped to the room between two x, its first line standing on `y`. */
export function paragraph(
  text: string,
  { leftPx, rightPx }: { readonly leftPx: number; readonly rightPx: number },
  {
    y,
    sizePx,
    look = "plain",
  }: { readonly y: number; readonly sizePx: number; readonly look?: TextRun["look"] },
): TextBlock {
  const lines = wrapped(text, rightPx - leftPx, sizePx).map((words, i) => ({
    spot: { x: leftPx, y: y + i * sizePx * 1.35, sizePx, from: "start" as const },
    run: { text: words, ink: "pencil" as const, look },
  }));
  return {
    svg: lines.map(({ spot, run }) => textLine(spot, run)),
    endsPx: y + lines.length * sizePx * 1.35,
  };
}

/** Lines a title may take. */
const TITLE_LINES = 2;

/** The head of a sheet: its title, and under it in a sentence or two what is to be seen. */
export function pictureHead(sheet: PictureSheet, title: string, text: string): TextBlock {
  const { titlePx, smallPx } = sheet;
  const margins = marginsOf(sheet);
  const roomPx = margins.rightPx - margins.leftPx;
  const all = wrapped(title, roomPx, titlePx);
  const rest = all.slice(TITLE_LINES - 1).join(" ");
  const lines = [...all.slice(0, TITLE_LINES - 1), ...(rest ? [cutTo(rest, roomPx, titlePx)] : [])];
  const top = sheet.marginPx + titlePx * 0.9;
  const spot = (i: number): TextSpot => ({
    x: margins.leftPx,
    y: top + i * titlePx * 1.15,
    sizePx: titlePx,
    from: "start",
  });
  const y = top + Math.max(0, lines.length - 1) * titlePx * 1.15 + titlePx;
  const below = paragraph(text, margins, { y, sizePx: smallPx });
  const svg = lines.map((words, i) => textLine(spot(i), { text: words, ink: "ink", look: "name" }));
  return {
    svg: [...svg, ...below.svg],
    endsPx: below.endsPx,
  };
}
