import { type DaySpan, earliest, joinWords, latest } from "../../base/index.ts";
import { seasonFor } from "../../engine/index.ts";
import { type Bed, type Plan, seasonOf } from "../../garden/model/index.ts";
import { crossings } from "./crossings.ts";
import { axisPx, degreeLabels, readableRange, type TemperatureField } from "./degrees.ts";
import type { Box } from "./labels.ts";
import { monthNames, sampleDays, wholeMonths } from "./scale.ts";
import { marginsOf, type PictureSheet, paragraph, pictureHead, sheetOf } from "./sheet.ts";
import type { DrawnSeason, Sketch } from "./sketch.ts";
import { bandBoxes, lineBoxes, soilLines } from "./soil-band.ts";
import { type SoilWait, soilWaitsOf, soilWaitText } from "./soil-waits.ts";
import { pictureSvg, plainLine, withHalo } from "./svg.ts";
import { todayLabel } from "./today.ts";
import { soilIn } from "./warmth.ts";

/** The soil at seed depth through the season, from a cool one to a warm one, with what waits for it on the line. */
export function soilPicture(sketch: Sketch): string {
  const { plan } = sketch;
  const sheet = sheetOf(sketch.form);
  const name = `${plainLine(plan.name)}, ${plan.year}`;
  const head = pictureHead(sheet, `Soil in ${name}`, SOIL_CAPTION);
  const months = head.endsPx + 1.2 * sheet.smallPx;
  const waiting = soilWaitsOf(sketch);
  const notes = (y: number) =>
    paragraph(notesOf(sketch, waiting), marginsOf(sheet), { y, sizePx: sheet.smallPx });
  const field = fieldOf(sketch, sheet, { months, notesPx: notes(0).endsPx });
  const foot = notes(field.lowPx + 2.2 * sheet.smallPx);
  return pictureSvg({
    subject: "soil",
    widthPx: sheet.widthPx,
    heightPx: sheet.heightPx ?? foot.endsPx + sheet.marginPx / 2,
    title: `The soil in ${name}`,
    description: [
      SOIL_CAPTION,
      ...waiting.map((each) => soilWaitText(each, plan)),
      notesOf(sketch, []),
    ].join(" "),
    parts: [
      ...head.svg,
      monthNames(field.scale, months, sheet.smallPx),
      ...soilLines(sketch, filmOf(plan), field),
      ...labels(sketch, waiting, { field, sheet }),
      ...foot.svg,
    ],
  });
}

const SOIL_CAPTION =
  "How warm the soil is at the depth of seed: the line in a usual season, the band from a cool season to a warm one.";

/** A bed under film, for all of them: film warms each alike; null where there is none. */
function filmOf({ beds }: Plan): Bed | null {
  return beds.find((bed) => bed.warmed) ?? null;
}

/**
 * Notes below the drawing: crops that the soil is never or always warm enough for, the dotted line, and where the curve
 * is rough.
 */
function notesOf({ year, plan }: DrawnSeason, waiting: readonly SoilWait[]): string {
  const never = waiting.filter(({ day }) => day === null).map((each) => soilWaitText(each, plan));
  const always = waiting.filter((each) => each.always).flatMap(({ names }) => names);
  const film = plan.beds.filter((bed) => bed.warmed).map((bed) => plainLine(bed.name));
  return [
    ...never,
    ...(always.length === 0
      ? []
      : [`Warm enough all year for ${joinWords([...new Set(always)])}.`]),
    ...(film.length === 0 ? [] : [`The dotted line is soil under film: ${film.join(", ")}.`]),
    ...(seasonFor(year, plan).climate.rough
      ? ["The plan has no monthly temperatures: this is a rough guess."]
      : []),
  ].join(" ");
}

/** The soil temperature from which the year is drawn [°C]. Source: house rule; frozen ground shows nothing. */
const STIRS_C = 2;

function daysShown(drawn: DrawnSeason): DaySpan {
  const season = seasonOf(drawn.plan);
  const soil = soilIn(drawn, null);
  const warm = sampleDays({ ...season, leftPx: 0, rightPx: 1 }, 1).filter(
    (day) => soil(day).usualC >= STIRS_C,
  );
  const shown = warm.length === 0 ? [season.from, season.to] : warm;
  return wholeMonths(earliest(...shown), latest(...shown));
}

/** Height of the field on a phone [px]. */
const PHONE_HIGH_PX = 400;

function fieldOf(
  drawn: DrawnSeason,
  sheet: PictureSheet,
  { months, notesPx }: { readonly months: number; readonly notesPx: number },
): TemperatureField {
  const { plan } = drawn;
  const topPx = months + 3.4 * sheet.smallPx;
  const lowest = (sheet.heightPx ?? 0) - sheet.marginPx / 2 - notesPx - 2.2 * sheet.smallPx;
  const { leftPx, rightPx } = marginsOf(sheet);
  const shown = daysShown(drawn);
  const days = sampleDays({ ...shown, leftPx, rightPx }, 3);
  const open = days.map(soilIn(drawn, null));
  const film = days.map(soilIn(drawn, filmOf(plan)));
  const span = readableRange(plan.measures, {
    leastC: Math.min(...open.map((soil) => soil.coolC)),
    mostC: Math.max(...open.map((soil) => soil.warmC), ...film.map((soil) => soil.usualC)) + 1,
  });
  return {
    scale: { ...shown, leftPx: leftPx + axisPx(plan.measures, span, sheet), rightPx },
    topPx,
    lowPx: sheet.heightPx === null ? topPx + PHONE_HIGH_PX : lowest,
    ...span,
  };
}

type SoilLabelSpace = { readonly field: TemperatureField; readonly sheet: PictureSheet };

/** Today, degrees along the side, what waits, and what was measured, each where it finds room. */
function labels(
  sketch: Sketch,
  waiting: readonly SoilWait[],
  { field, sheet }: SoilLabelSpace,
): readonly string[] {
  const { scale, topPx, lowPx } = field;
  const within: Box = {
    x: scale.leftPx,
    y: topPx,
    widthPx: scale.rightPx - scale.leftPx,
    heightPx: lowPx - topPx,
  };
  const now = todayLabel(sketch.today, scale, { drop: { topPx, lowPx }, sheet });
  const band = bandBoxes(sketch, filmOf(sketch.plan), field);
  const lines = lineBoxes(sketch, filmOf(sketch.plan), field);
  const area = { field, sheet, within, band, taken: [...now.boxes, ...lines] };
  const degrees = degreeLabels(sketch.plan.measures, field, sheet);
  return [...now.svg, ...degrees, withHalo(...crossings(sketch, waiting, area))];
}
