import { type Day, sayDay } from "../../base/index.ts";
import { bandGradient, chanceOfFrost, warmthShown } from "./band-gradients.ts";
import type { BedRow } from "./beds.ts";
import type { Column } from "./fill-columns.ts";
import { type Box, type LabelRequest, labelRequestAt, placeLabels } from "./labels.ts";
import type { Lane } from "./lanes.ts";
import type { PictureLayout } from "./layout.ts";
import { cutTo } from "./measure.ts";
import { monthNames, type Scale, shows, xOf } from "./scale.ts";
import type { PictureSheet } from "./sheet.ts";
import { eatingLine, silhouette } from "./silhouette.ts";
import type { Sketch } from "./sketch.ts";
import { element, tenth, textLine } from "./svg.ts";
import { todayLine } from "./today.ts";

/** What a column is drawn with: its number from 0, where its beds begin [px], the layout and the garden. */
export type ColumnDrawing = {
  readonly i: number;
  readonly topPx: number;
  readonly layout: PictureLayout;
  readonly sketch: Sketch;
};

/** One column of the season: the bands, the months with their marks, then bed by bed. */
export function drawColumn(column: Column, drawing: ColumnDrawing): readonly string[] {
  const { scale, blocks, endsPx } = column;
  const { i, topPx, layout, sketch } = drawing;
  const months = topPx - 2.6 * layout.sheet.smallPx;
  const wide = { x: scale.leftPx, width: scale.rightPx - scale.leftPx };
  const sky = { ...wide, y: months + 5, height: endsPx - months - 5 };
  return [
    ...bandGradients(scale, drawing),
    element("rect", { fill: `url(#season-frost-${i})`, ...sky }),
    monthNames(scale, months, layout.sheet.smallPx),
    ...dateMarks(sketch, scale, { months, sheet: layout.sheet }),
    ...blocks.flatMap(({ row, lanes, y }) => drawBed({ ...drawing, row, lanes, y, scale })),
  ];
}

/** The frosty air, the ground in the open, and the ground under film. */
function bandGradients(scale: Scale, { i, sketch }: ColumnDrawing): readonly string[] {
  const { plan } = sketch;
  const film = plan.beds.find((bed) => bed.warmed);
  return [
    bandGradient(`season-frost-${i}`, "frost", { scale, share: (day) => chanceOfFrost(plan, day) }),
    bandGradient(`season-open-${i}`, "warm", { scale, share: warmthShown(sketch, null) }),
    ...(film
      ? [bandGradient(`season-film-${i}`, "warm", { scale, share: warmthShown(sketch, film) })]
      : []),
  ];
}

/** The usual frosts and today, named under the months where there is room. */
function dateMarks(
  { plan, today }: Sketch,
  scale: Scale,
  { months, sheet: { smallPx } }: { readonly months: number; readonly sheet: PictureSheet },
): readonly string[] {
  const { lastFrost, firstFrost } = plan.site;
  const dates: readonly (readonly [string, Day | null])[] = [
    ["today", today],
    ["last frost", lastFrost?.usual ?? null],
    ["first frost", firstFrost?.usual ?? null],
  ];
  const rows = [months + 1.35 * smallPx, months + 2.45 * smallPx];
  const requests = dates.flatMap(([what, day]): readonly LabelRequest[] => {
    if (day === null || !shows(scale, day)) return [];
    const run = { text: `${what} ${sayDay(day)}`, ink: "pencil", look: "aside" } as const;
    return [labelRequestAt(xOf(scale, day), { rows, sizePx: smallPx }, run)];
  });
  const within: Box = {
    x: scale.leftPx,
    y: months,
    widthPx: scale.rightPx - scale.leftPx,
    heightPx: 4 * smallPx,
  };
  return placeLabels(requests, within).svg;
}

type BedDrawing = ColumnDrawing & {
  readonly row: BedRow;
  readonly lanes: readonly Lane[];
  readonly y: number;
  readonly scale: Scale;
};

/** A bed: its name above its lanes or left of the first, and its lanes one below the other. */
function drawBed(drawing: BedDrawing): readonly string[] {
  const { row, lanes, y } = drawing;
  const { heights } = drawing.layout;
  const under = y + (row.name === "" ? 0 : heights.headingPx);
  const soilY = (i: number) => under + i * (heights.airPx + heights.groundPx) + heights.airPx;
  return [
    ...(row.name === "" ? [] : [bedNameText(drawing, soilY(0))]),
    ...lanes.flatMap((lane, i) => drawLane(lane, soilY(i), drawing)),
  ];
}

function bedNameText({ row, y, scale, layout }: BedDrawing, soilY: number): string {
  const { heights, sheet } = layout;
  const { gutterPx } = heights;
  const roomPx = gutterPx > 0 ? gutterPx - 10 : scale.rightPx - scale.leftPx;
  const text = cutTo(row.name, roomPx, sheet.namePx);
  const at = gutterPx > 0 ? soilY + 4 : y + heights.headingPx - 8;
  const spot = { x: scale.leftPx - gutterPx, y: at, sizePx: sheet.namePx, from: "start" } as const;
  return textLine(spot, { text, ink: "ink", look: "aside" });
}

/** A lane: today, the ground, each planting's sowings, the line of the soil, and each planting's words below it. */
function drawLane(
  lane: Lane,
  soilY: number,
  { i, row, scale, layout, sketch }: BedDrawing,
): readonly string[] {
  const { heights, sheet } = layout;
  const { leftPx, rightPx } = scale;
  const warm = row.bed?.warmed ? `season-film-${i}` : `season-open-${i}`;
  const ground = { x: leftPx, y: soilY, width: rightPx - leftPx, height: heights.groundPx - 4 };
  const words = { y: soilY + heights.groundPx - 6, sizePx: sheet.namePx, from: "start" } as const;
  const now = sketch.today !== null && shows(scale, sketch.today) ? xOf(scale, sketch.today) : null;
  return [
    ...(now === null ? [] : [todayLine(now, { topPx: soilY - heights.airPx + 2, lowPx: soilY })]),
    element("rect", { fill: `url(#${warm})`, ...ground }),
    ...drawPlants(lane, soilY, { scale, layout }),
    element("path", {
      class: "soil-line",
      "stroke-width": 1.4,
      d: `M${tenth(leftPx)} ${tenth(soilY)}H${tenth(rightPx)}`,
    }),
    ...lane.flatMap(({ plant: { lives } }) =>
      lives.map((life) => eatingLine(life, { scale, soilY, topPx: 0, rootPx: 0 })),
    ),
    ...lane.map(({ runs, x }) => textLine({ ...words, x }, ...runs)),
  ];
}

/** The sowings of a lane's plantings, the later in front of the earlier. */
function drawPlants(
  lane: Lane,
  soilY: number,
  { scale, layout }: Pick<BedDrawing, "scale" | "layout">,
): readonly string[] {
  const { heights, sheet } = layout;
  const rootPx = heights.groundPx - sheet.namePx - 5;
  const ground = { scale, soilY, topPx: heights.airPx - 4, rootPx };
  return lane.flatMap(({ plant: { planting, crop, lives } }) =>
    crop
      ? lives.map((life, i) =>
          silhouette(`of-${idOf(planting.key)}-${i + 1}`, life, { crop, ground }),
        )
      : [],
  );
}

/** A key in letters that any reader takes for an id; different keys stay different. */
function idOf(key: string): string {
  return key.replace(/[^a-z0-9]/gu, (letter) => `_${(letter.codePointAt(0) ?? 0).toString(16)}`);
}
