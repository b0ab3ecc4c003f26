import { type Day, type DaySpan, earliest, latest, sayDay } from "../../base/index.ts";
import { chanceOfFrostAfter, firstFrostAt, lastFrostAt } from "../../engine/index.ts";
import { type Plan, seasonOf } from "../../garden/model/index.ts";
import { bandGradient, warmthShown } from "./band-gradients.ts";
import { frostDateLabels } from "./dates.ts";
import { drawDrift, edgeAt, type FrostField } from "./drift.ts";
import { autumnOdds, frostDateLines, raisedPlantsOut, springOdds } from "./frost-text.ts";
import { monthNames, wholeMonths, xInside } from "./scale.ts";
import {
  marginsOf,
  type PictureSheet,
  paragraph,
  pictureHead,
  sheetOf,
  type TextBlock,
} from "./sheet.ts";
import type { DrawnSeason, Sketch } from "./sketch.ts";
import { element, pictureSvg, plainLine, tenth, withHalo } from "./svg.ts";
import { todayLabel } from "./today.ts";

/** The chance of frost through the season, drawn as snow that melts in spring and drifts back in autumn. */
export function frostPicture(sketch: Sketch): string {
  const { plan } = sketch;
  const sheet = sheetOf(sketch.form);
  const name = `${plainLine(plan.name)}, ${plan.year}`;
  const head = pictureHead(sheet, `Frost in ${name}`, frostCaptionOf(plan));
  const months = head.endsPx + 1.2 * sheet.smallPx;
  const field = fieldOf(plan, sheet, months);
  const foot = raisedPlantsLabel(plan, field, sheet);
  return pictureSvg({
    subject: "frost",
    widthPx: sheet.widthPx,
    heightPx: sheet.heightPx ?? foot.endsPx + sheet.marginPx / 2,
    title: `The chance of frost in ${name}`,
    description: [frostCaptionOf(plan), ...frostDateLines(plan)].join(" "),
    parts: [
      ...head.svg,
      monthNames(field.scale, months, sheet.smallPx),
      ...drifts(sketch, field),
      ...todayOf(sketch, field, sheet),
      ...foot.svg,
      withHalo(...frostDateLabels(plan, field, sheet)),
    ],
  });
}

function frostCaptionOf({ site }: Plan): string {
  return site.lastFrost && site.firstFrost
    ? "How likely it is that frost is still to come in spring, and has come in autumn."
    : "No frost is expected here: there is no cold night to wait for.";
}

/** Height of the drifts on a phone, and of the empty air where there are none [px]. */
const [PHONE_HIGH_PX, BARE_HIGH_PX] = [330, 60];

function fieldOf(plan: Plan, sheet: PictureSheet, months: number): FrostField {
  const topPx = months + 4.2 * sheet.smallPx;
  const roomPx = (sheet.heightPx ?? 0) - sheet.marginPx - topPx - 5 * sheet.smallPx;
  const frostyPx = sheet.heightPx === null ? PHONE_HIGH_PX : roomPx;
  const highPx = plan.site.lastFrost ? frostyPx : BARE_HIGH_PX;
  return { scale: { ...daysShown(plan), ...marginsOf(sheet) }, topPx, groundPx: topPx + highPx };
}

/** Chance of frost at which the picture begins and ends. Source: house rule; beyond it, every year freezes. */
const SURE = 0.985;

/** Whole months with the two slopes in them; the season where there is no frost. */
function daysShown(plan: Plan): DaySpan {
  const { from, to } = seasonOf(plan);
  const { lastFrost, firstFrost } = plan.site;
  return wholeMonths(
    lastFrost ? latest(from, earliest(lastFrost.early, lastFrostAt(lastFrost, SURE))) : from,
    firstFrost ? earliest(to, latest(firstFrost.late, firstFrostAt(firstFrost, SURE))) : to,
  );
}

function drifts(drawn: DrawnSeason, field: FrostField): readonly string[] {
  const { site } = drawn.plan;
  const { scale, groundPx } = field;
  return [
    ...(site.lastFrost ? [] : warmGround(drawn, field)),
    ...(site.lastFrost ? [drawDrift(site.lastFrost, "spring", field)] : []),
    ...(site.firstFrost ? [drawDrift(site.firstFrost, "autumn", field)] : []),
    element("path", {
      class: "soil-line",
      "stroke-width": 2,
      d: `M${tenth(scale.leftPx)} ${tenth(groundPx)}H${tenth(scale.rightPx)}`,
    }),
  ];
}

/** Where there is no frost to draw: how warm the ground is through the year. */
function warmGround(drawn: DrawnSeason, { scale, groundPx }: FrostField): readonly string[] {
  const width = scale.rightPx - scale.leftPx;
  return [
    bandGradient("frost-ground", "warm", { scale, share: warmthShown(drawn, null) }),
    element("rect", {
      fill: "url(#frost-ground)",
      x: scale.leftPx,
      y: groundPx,
      width,
      height: 22,
    }),
  ];
}

/** The day raised plants may go out at the plan's own risk: a stem from the drift's edge down to its words. */
function raisedPlantsLabel(plan: Plan, field: FrostField, sheet: PictureSheet): TextBlock {
  const raised = raisedPlantsOut(plan);
  const dates = plan.site.lastFrost;
  const { scale, groundPx } = field;
  const y = groundPx + 3.2 * sheet.smallPx;
  const size = { y, sizePx: sheet.namePx };
  if (!raised || !dates)
    return paragraph(
      "Brown ground: the soil is warm. Plants go out when it is warm enough for them.",
      marginsOf(sheet),
      size,
    );
  const text = `Tender plants we raised go out from ${sayDay(raised.day)}. Frost still comes after that in ${raised.odds}.`;
  const x = xInside(scale, raised.day);
  const leftPx = Math.max(scale.leftPx, Math.min(x - 6, scale.rightPx - WORDS_PX));
  const below = paragraph(text, { leftPx, rightPx: scale.rightPx }, size);
  const edge = edgeAt(dates, "spring", { day: raised.day, field });
  const d = `M${tenth(x)} ${tenth(y - 1.2 * sheet.namePx)}V${tenth(edge.y)}`;
  const stem = element("path", { class: "plant-line", "stroke-width": 2.6, d });
  const tip = element("circle", { class: "plant", cx: x, cy: edge.y, r: 6 });
  return { ...below, svg: [stem, tip, ...below.svg] };
}

/** Width that the words for raised plants want at the least [px]. */
const WORDS_PX = 260;

/** Today with its odds, said as those of the dates are. */
function todayOf(
  { plan, today }: Sketch,
  field: FrostField,
  sheet: PictureSheet,
): readonly string[] {
  const drop = { topPx: field.topPx - 1.6 * sheet.smallPx, lowPx: field.groundPx };
  const more = today === null ? "" : oddsOn(plan, today);
  return todayLabel(today, field.scale, { drop, sheet, more }).svg;
}

function oddsOn({ site }: Plan, day: Day): string {
  const { lastFrost, firstFrost } = site;
  if (lastFrost && chanceOfFrostAfter(lastFrost, day) >= 0.02)
    return `: ${springOdds(lastFrost, day)}`;
  if (firstFrost && chanceOfFrostAfter(firstFrost, day) <= 0.98)
    return `: ${autumnOdds(firstFrost, day)}`;
  return "";
}
