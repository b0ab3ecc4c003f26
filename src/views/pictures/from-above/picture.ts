import { sayDay } from "../../../base/index.ts";
import {
  marginsOf,
  type PictureSheet,
  paragraph,
  pictureHead,
  sheetOf,
  type TextBlock,
} from "../sheet.ts";
import { pictureSvg, plainLine } from "../svg.ts";
import { type BedInWords, bedsInWords, textOf } from "./bed-words.ts";
import { type CellDrawing, drawCell, heightAbove, roughCell } from "./cell.ts";
import { detailsOf, type SketchDetails } from "./details.ts";
import type { GroundScale } from "./ground.ts";
import { bedsFoot } from "./key.ts";
import { hatching } from "./marks.ts";
import { scaleFor, shelvesAbove } from "./scales.ts";
import { type Shelves, type Shelving, shelvesAt } from "./shelves.ts";
import type { BedsSketch } from "./sketch.ts";

/** A drawing, its size [px], and the same in words, bed by bed. */
export type BedsDrawing = {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly words: readonly BedInWords[];
};

/** The beds of a plan from above, to one scale, as they are on a day. Null where there is no bed to draw. */
export function drawBeds(sketch: BedsSketch): BedsDrawing | null {
  const details = detailsOf(sketch);
  if (details.beds.length === 0) return null;
  const drawing = { sketch, details };
  const { sheet, shelves } = layOut(drawing);
  const rest = restOf(sheet, shelves.endsPx, drawing);
  const foot = footOf(sheet, shelves, { ...drawing, y: rest.endsPx + sheet.smallPx });
  const words = bedsInWords(sketch);
  const told = words.map(({ name, text }) => `${name}: ${text}`);
  const [widthPx, heightPx] = [sheet.widthPx, sheet.heightPx ?? foot.endsPx + sheet.marginPx / 2];
  const svg = pictureSvg({
    ...{
      subject: "beds",
      widthPx,
      heightPx,
      inset: sketch.inset,
      styled: sketch.styled ?? !sketch.inset,
    },
    title: `The beds of ${titleOf(sketch)}`,
    description: [sketch.notes?.text ?? "", ...told].filter(Boolean).join(" "),
    parts: [
      ...(isCovered(details) ? [hatching()] : []),
      ...headOf(sheet, sketch).svg,
      ...shelves.svg,
      ...rest.svg,
      ...foot.svg,
    ],
  });
  return { svg, widthPx, heightPx: Math.ceil(heightPx), words };
}

type WholeDrawing = { readonly sketch: BedsSketch; readonly details: SketchDetails };

function footOf(
  sheet: PictureSheet,
  scale: GroundScale,
  { sketch, details, y }: WholeDrawing & { readonly y: number },
): TextBlock {
  return bedsFoot(sheet, scale, { details, measures: sketch.plan.measures, y });
}

const titleOf = ({ plan, day }: BedsSketch) => `${plainLine(plan.name)}, ${sayDay(day, true)}`;

/** A page has a title of its own. */
function headOf(sheet: PictureSheet, sketch: BedsSketch): TextBlock {
  if (sketch.inset) return { svg: [], endsPx: 0 };
  return pictureHead(sheet, titleOf(sketch), sketch.notes?.text ?? "");
}

/** A drawing in a page: as wide as a phone's column is, with room for a line at its edge [px]. */
const INSET = { widthPx: 358, marginPx: 4 } as const;

const sheetFor = ({ form, inset }: BedsSketch): PictureSheet =>
  inset ? { ...sheetOf("phone"), ...INSET } : sheetOf(form);

/** Space between beds side by side, and least width of a bed's words [px], by form. */
const GAP_PX = { phone: 14, page: 26 } as const;
const WORDS_PX = { phone: 165, page: 180 } as const;

type Layout = { readonly sheet: PictureSheet; readonly shelves: Shelves };

/** On a phone as long as it gets; on a page as large as it fits, with finer lines where none fits. */
function layOut(whole: WholeDrawing): Layout {
  const { sketch, details } = whole;
  const { beds } = details;
  const form = sheetFor(sketch);
  if (form.heightPx === null) {
    const scale = scaleFor(beds, shelvingOn({ sheet: form, sketch }, "rough"));
    const shelving = shelvingOn({ sheet: form, sketch }, "exact");
    return { sheet: form, shelves: shelvesAt(beds, scale, shelving) };
  }
  for (let zoom = 1; ; zoom *= 1.08) {
    const sheet: PictureSheet = {
      ...form,
      widthPx: Math.round(form.widthPx * zoom),
      heightPx: Math.round(form.heightPx * zoom),
    };
    const drawing = { sheet, sketch };
    const lowest = lowestOf(sheet, whole);
    const shelves = shelvesAbove(beds, lowest, {
      rough: shelvingOn(drawing, "rough"),
      exact: shelvingOn(drawing, "exact"),
    });
    if (shelves) return { sheet, shelves };
  }
}

/** The y [px] down to which the beds may reach on a page. */
function lowestOf(sheet: PictureSheet, whole: WholeDrawing): number {
  const foot = footOf(sheet, { pxPerCm: 1 }, { ...whole, y: 0 }).endsPx;
  const rest = restOf(sheet, 0, whole).endsPx;
  return (sheet.heightPx ?? 0) - sheet.marginPx / 2 - foot - rest - sheet.smallPx;
}

function shelvingOn(drawing: CellDrawing, how: "rough" | "exact"): Shelving {
  const { sheet, sketch } = drawing;
  const { leftPx, rightPx } = marginsOf(sheet);
  const room = { widthPx: rightPx - leftPx, gapPx: GAP_PX[sheet.form] };
  return {
    ...room,
    x: leftPx,
    y: headOf(sheet, sketch).endsPx + sheet.smallPx * 0.5,
    wordsPx: WORDS_PX[sheet.form],
    heightAbove: (details, textPx) => heightAbove(details, textPx, drawing),
    bodyOf: (cell, scale) =>
      how === "rough" ? roughCell(cell, drawing) : drawCell(cell, scale, drawing),
  };
}

/** What stands in no bed, in words below the beds. */
function restOf(sheet: PictureSheet, y: number, { sketch, details }: WholeDrawing): TextBlock {
  const text = textOf(details.rest, sketch, "");
  if (text === "") return { svg: [], endsPx: y };
  const sizePx = sheet.smallPx;
  return paragraph(`In no bed: ${text}`, marginsOf(sheet), { y: y + sizePx, sizePx });
}

/** Whether anything is to be covered, so that there is hatching. */
function isCovered({ beds }: SketchDetails): boolean {
  return beds.some(({ note }) => note.marks.some(({ as }) => as === "cover"));
}
