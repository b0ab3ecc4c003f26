import { joinWords } from "../../../base/index.ts";
import { widthOf, wrapped } from "../measure.ts";
import type { PictureSheet } from "../sheet.ts";
import { plainLine, type TextRun, textLine } from "../svg.ts";
import type { BedContent, DrawnBed } from "./bed-content.ts";
import { asInSentence, sizeText } from "./bed-words.ts";
import type { BedDetails } from "./details.ts";
import { drawBags } from "./draw-bags.ts";
import { drawBed } from "./draw-bed.ts";
import type { GroundScale, Outline } from "./ground.ts";
import type { Cell, CellBody } from "./shelves.ts";
import type { BedsSketch } from "./sketch.ts";

/** What every bed of a drawing is drawn with. */
export type CellDrawing = { readonly sheet: PictureSheet; readonly sketch: BedsSketch };

/** Distance of lines of text [of their size]. */
export const LINE_EM = 1.3;

/** Size of names in a bed [px]. */
const NAMES_PX = 12;

/** The height of the words above a bed [px]. */
export function heightAbove(details: BedDetails, textPx: number, drawing: CellDrawing): number {
  const lines = headingOf(details, textPx, drawing).length;
  return (lines * LINE_EM + 0.3) * drawing.sheet.namePx;
}

/** A bed without drawing it, for its height: names are taken to find room in it. */
export function roughCell({ details, textPx }: Cell, drawing: CellDrawing): CellBody {
  const { bed, standing } = details;
  const drawn = bed.bags
    ? { svg: [], named: 0, unnamed: standing.map(({ name }) => name) }
    : { svg: [], named: standing.length, unnamed: [] };
  return {
    svg: [],
    belowPx: heightBelow(linesBelow(details, textPx, { ...drawing, drawn }), drawing),
  };
}

/** A bed in its place with its words. */
export function drawCell(cell: Cell, scale: GroundScale, drawing: CellDrawing): CellBody {
  const { details, outline, x, bedY, textPx } = cell;
  const { namePx, smallPx } = drawing.sheet;
  const heading = headingOf(details, textPx, drawing);
  const first = bedY - 0.55 * namePx - (heading.length - 1) * LINE_EM * namePx;
  const drawn = drawGround(details, { scale, outline, at: { x, y: bedY } }, drawing);
  const lines = linesBelow(details, textPx, { ...drawing, drawn });
  const below = bedY + outline.heightPx + 1.15 * LINE_EM * smallPx;
  const spot = (i: number, from: number, sizePx: number) =>
    ({ x, y: from + i * LINE_EM * sizePx, sizePx, from: "start" }) as const;
  const svg = [
    ...heading.map((runs, i) => textLine(spot(i, first, namePx), ...runs)),
    ...drawn.svg,
    ...lines.map((run, i) => textLine(spot(i, below, smallPx), run)),
  ];
  return { svg, belowPx: heightBelow(lines, drawing) };
}

function heightBelow({ length }: readonly TextRun[], { sheet }: CellDrawing): number {
  return length === 0 ? 0 : (length + 0.35) * LINE_EM * sheet.smallPx;
}

type DrawnCell = CellDrawing & { readonly drawn: DrawnBed };

type GroundSpot = Pick<BedContent, "at"> & {
  readonly scale: GroundScale;
  readonly outline: Outline;
};

function drawGround(
  { bed, standing, note }: BedDetails,
  { scale, outline, at }: GroundSpot,
  { sheet, sketch }: CellDrawing,
): DrawnBed {
  const content: BedContent = {
    ...{ pxPerCm: scale.pxPerCm, outline, at, standing },
    note,
    day: sketch.day,
    wordsPx: Math.min(NAMES_PX, sheet.smallPx),
  };
  return bed.bags ? drawBags(bed.bags, content) : drawBed(bed, content);
}

/** The lines above a bed: its name and its size, on one line where they fit. */
function headingOf(
  { bed }: BedDetails,
  textPx: number,
  { sheet: { namePx }, sketch }: CellDrawing,
): readonly (readonly TextRun[])[] {
  const size = sizeText(bed, sketch.plan.measures);
  const names = wrapped(plainLine(bed.name), textPx, namePx);
  const lines = names.map((text): TextRun[] => [{ text, ink: "ink", look: "name" }]);
  const run = { ink: "pencil", look: "plain" } as const;
  if (widthOf(`${names.at(-1) ?? ""} ${size}`, namePx) <= textPx)
    lines.at(-1)?.push({ ...run, text: size });
  else lines.push(...wrapped(size, textPx, namePx).map((text) => [{ ...run, text }]));
  return lines;
}

/** The lines below a bed: names that found no room in it, and what is said of it. */
function linesBelow(
  { bed, note }: BedDetails,
  textPx: number,
  { drawn: { named, unnamed }, sheet }: DrawnCell,
): readonly TextRun[] {
  const some = named > 0 ? "Also " : bed.bags || unnamed.length < 2 ? "" : "Top to bottom: ";
  const listed = unnamed.map((name, i) => (some === "" && i === 0 ? name : asInSentence(name)));
  const names = unnamed.length === 0 ? "" : `${some}${joinWords(listed)}`;
  const empty = named + unnamed.length + note.lines.length === 0 ? "Empty" : names;
  const set = (text: string, ink: TextRun["ink"]): readonly TextRun[] =>
    wrapped(text, textPx, sheet.smallPx).map((line) => ({ text: line, ink, look: "plain" }));
  const said = note.lines.flatMap((line) => set(plainLine(line), "ink"));
  return [...set(empty, "pencil"), ...said];
}
