import { joinWords } from "../../../base/index.ts";
import { widthOf, wrapped } from "../measure.ts";
import type { PictureSheet } from "../sheet.ts";
import { plainLine, type TextRun, textLine } from "../svg.ts";
import type { BedContent, DrawnBed } from "./bed-content.ts";
import { asInSentence, sizeText } from "./bed-words.ts";
import type { BedDetails } from "./details.ts";
import { drawBags } from "./draw-bags.ts";
import { drawBed } from "./draw-bed.ts";
import { type GroundScale, type Outline, outlineOf, type ShelfRoom } from "./ground.ts";
import type { Cell, WordsHeight } from "./shelves.ts";
import type { BedsSketch } from "./sketch.ts";

/** What every bed of a drawing is drawn with. */
export type CellDrawing = { readonly sheet: PictureSheet; readonly sketch: BedsSketch };

/** Distance of lines of text [of their size]. */
export const LINE_EM = 1.3;

/** Size of names in a bed [px]. */
const NAMES_PX = 12;

/** The height of a bed's words without drawing it: names are taken to find room in it. */
export function roughHeight(
  details: BedDetails,
  textPx: number,
  drawing: CellDrawing,
): WordsHeight {
  const named = details.bed.bags ? 0 : details.standing.length;
  const unnamed = details.bed.bags ? details.standing.map(({ name }) => name) : [];
  return heightOf(details, textPx, { ...drawing, drawn: { svg: [], named, unnamed } });
}

/** The height of a bed's words, in a sheet with that room, at a scale. */
export function exactHeight(
  details: BedDetails,
  textPx: number,
  { scale, room, ...drawing }: CellDrawing & { scale: GroundScale; room: ShelfRoom },
): WordsHeight {
  const outline = outlineOf(details.bed, scale, room);
  const drawn = drawGround(details, { scale, outline, at: { x: 0, y: 0 } }, drawing);
  return heightOf(details, textPx, { ...drawing, drawn });
}

type DrawnCell = CellDrawing & { readonly drawn: DrawnBed };

function heightOf(details: BedDetails, textPx: number, cell: DrawnCell): WordsHeight {
  const above = headingOf(details, textPx, cell).length;
  const below = linesBelow(details, textPx, cell).length;
  return {
    above: (above * LINE_EM + 0.3) * cell.sheet.namePx,
    below: below === 0 ? 0 : (below + 0.35) * LINE_EM * cell.sheet.smallPx,
  };
}

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

/** A bed in its place with its words. */
export function drawCell(cell: Cell, scale: GroundScale, drawing: CellDrawing): readonly string[] {
  const { details, outline, x, bedY, textPx } = cell;
  const { namePx, smallPx } = drawing.sheet;
  const heading = headingOf(details, textPx, drawing);
  const first = bedY - 0.55 * namePx - (heading.length - 1) * LINE_EM * namePx;
  const drawn = drawGround(details, { scale, outline, at: { x, y: bedY } }, drawing);
  const below = bedY + outline.heightPx + 1.15 * LINE_EM * smallPx;
  const spot = (i: number, from: number, sizePx: number) =>
    ({ x, y: from + i * LINE_EM * sizePx, sizePx, from: "start" }) as const;
  return [
    ...heading.map((runs, i) => textLine(spot(i, first, namePx), ...runs)),
    ...drawn.svg,
    ...linesBelow(details, textPx, { ...drawing, drawn }).map((run, i) =>
      textLine(spot(i, below, smallPx), run),
    ),
  ];
}
