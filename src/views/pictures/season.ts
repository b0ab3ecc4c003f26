import { type DaySpan, earliest, latest, plus } from "../../base/index.ts";
import { type Plan, seasonOf } from "../../garden/model/index.ts";
import { type BedRow, bedRowsOf, type Plant } from "./beds.ts";
import { drawColumn } from "./column.ts";
import { usualFrostText } from "./frost-text.ts";
import { keyFoot } from "./key.ts";
import { layOutColumns } from "./layout.ts";
import { wholeMonths } from "./scale.ts";
import { type PictureSheet, pictureHead, sheetOf } from "./sheet.ts";
import type { Sketch } from "./sketch.ts";
import { pictureSvg, plainLine } from "./svg.ts";

/**
 * What grows when in each bed, drawn as it grows: bed by bed in walking order, one lane for plantings that follow each
 * other.
 */
export function seasonPicture(sketch: Sketch): string {
  const rows = bedRowsOf(sketch);
  const content = { rows, frost: sketch.plan.site.firstFrost !== null };
  const title = `${plainLine(sketch.plan.name)}, ${sketch.plan.year}`;
  const text = usualFrostText(sketch.plan);
  const head = (sheet: PictureSheet) => pictureHead(sheet, title, text);
  const footPx = (sheet: PictureSheet) => keyFoot(sheet, content, 0).endsPx;
  const topPx = (sheet: PictureSheet) => head(sheet).endsPx + MONTHS_LINES * sheet.smallPx;
  const room = (sheet: PictureSheet) => ({ topPx: topPx(sheet), footPx: footPx(sheet) });
  const layout = layOutColumns(sheetOf(sketch.form), { rows, days: daysShown(sketch, rows), room });
  const { sheet, columns } = layout;
  const lowest = Math.max(topPx(sheet), ...columns.map(({ endsPx }) => endsPx));
  const footY =
    sheet.heightPx === null ? lowest : sheet.heightPx - sheet.marginPx / 2 - footPx(sheet);
  const foot = keyFoot(sheet, content, footY);
  return pictureSvg({
    subject: "season",
    widthPx: sheet.widthPx,
    heightPx: sheet.heightPx ?? foot.endsPx + sheet.marginPx / 2,
    title: `The season in ${title}`,
    description: [text, ...rows.flatMap(rowLines)].join(" "),
    parts: [
      ...head(sheet).svg,
      ...columns.flatMap((column, i) =>
        drawColumn(column, { i, topPx: topPx(sheet), layout, sketch }),
      ),
      ...foot.svg,
    ],
  });
}

/** Lines of small type that the months and the marks below them take. */
const MONTHS_LINES = 3.6;

function rowLines({ name, plants }: BedRow): readonly string[] {
  return plants.map((plant) => `${plant.name}${name === "" ? "" : `, ${name}`}: ${plant.days}.`);
}

/** Whole months with all that starts or ends this season and its frosts; what runs over from or into another year bleeds off. */
function daysShown({ plan }: Sketch, rows: readonly BedRow[]): DaySpan {
  const season = seasonOf(plan);
  const { lastFrost, firstFrost } = plan.site;
  const lives = rows.flatMap(({ plants }) => plants).flatMap((plant) => plant.lives);
  const own = rows.flatMap(({ plants }) => plants).filter((plant) => isOwn(plant, plan));
  const starts = own.flatMap((plant) => plant.lives).map((life) => life.starts);
  const ends = lives.map((life) =>
    life.gone <= season.to ? life.gone : plus(latest(life.starts, season.from), 30),
  );
  const first = [...starts, ...(lastFrost ? [latest(season.from, lastFrost.early)] : [])];
  const last = [...ends, ...(firstFrost ? [firstFrost.late] : [])];
  const from = first.length === 0 ? season.from : earliest(...first);
  const to = last.length === 0 ? season.to : earliest(season.to, latest(plus(from, 90), ...last));
  return wholeMonths(from, to);
}

/** Whether it went in for this year's plan, and not before. */
function isOwn({ planting }: Plant, { plantings }: Plan): boolean {
  return planting.inSince === null && plantings.some(({ key }) => key === planting.key);
}
