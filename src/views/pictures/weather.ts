import { type Day, earliest, latest, plus, sayDay, sayQuantity } from "../../base/index.ts";
import {
  type Climate,
  climateFrom,
  seasonFor,
  WORTH_SAYING_K,
  weeksBefore,
} from "../../engine/index.ts";
import { curveOf, outlineOf } from "./curve.ts";
import { axisPx, degreeLabels, readableRange, type TemperatureField, yOf } from "./degrees.ts";
import { RAIN_HIGH_PX, rainBars, rainOf, rainText } from "./rain.ts";
import { monthNames, sampleDays, wholeMonths, xOf } from "./scale.ts";
import { marginsOf, type PictureSheet, paragraph, pictureHead, sheetOf } from "./sheet.ts";
import type { Sketch } from "./sketch.ts";
import { element, pictureSvg, plainLine, tenth } from "./svg.ts";
import { todayLabel } from "./today.ts";

/** Days that are drawn before today, where so many are known. Source: house rule: a season's quarter. */
const DAYS_BEHIND = 92;

/** Height of the field on a phone [px]. */
const PHONE_HIGH_PX = 300;

type KnownDay = { readonly day: Day; readonly lowC: number; readonly highC: number };

/** What is drawn: the known days of the season near today, and the climate that they and the usual days come from. */
type Drawn = {
  readonly known: readonly KnownDay[];
  readonly actual: Climate;
  readonly usual: Climate;
};

/** The season so far against a usual one: each day from its low to its high, the nights ahead, and the rain. */
export function weatherPicture(sketch: Sketch): string {
  const { plan } = sketch;
  const sheet = sheetOf(sketch.form);
  const name = `${plainLine(plan.name)}, ${plan.year}`;
  const head = pictureHead(sheet, `The season so far in ${name}`, CAPTION);
  const months = head.endsPx + 1.2 * sheet.smallPx;
  const drawn = drawnOf(sketch);
  const text = comparison(sketch, drawn);
  const rain = rainOf(drawn.known, drawn.actual);
  const field = fieldOf(sketch, drawn, { sheet, months });
  const rainPx = field.lowPx + 2.4 * sheet.smallPx;
  const foot = paragraph(text, marginsOf(sheet), {
    y: rainPx + RAIN_HIGH_PX + 2 * sheet.smallPx,
    sizePx: sheet.smallPx,
  });
  const now = todayLabel(sketch.today, field.scale, {
    drop: { topPx: field.topPx, lowPx: rainPx + RAIN_HIGH_PX },
    sheet,
  });
  return pictureSvg({
    subject: "weather",
    widthPx: sheet.widthPx,
    heightPx: sheet.heightPx ?? foot.endsPx + sheet.marginPx / 2,
    title: `The season so far in ${name}`,
    description: `${CAPTION} ${text}`,
    parts: [
      ...head.svg,
      monthNames(field.scale, months, sheet.smallPx),
      usualBand(drawn, field),
      freezingLine(field),
      ...dayStrokes(sketch, drawn, field),
      ...rainBars(rain, field.scale, { topPx: rainPx, measures: plan.measures, sheet }),
      ...degreeLabels(plan.measures, field, sheet),
      ...now.svg,
      ...foot.svg,
    ],
  });
}

const CAPTION =
  "Each day as a stroke from its low to its high, days ahead as they are forecast; the band is a usual season. Below, the rain.";

function drawnOf({ year, plan, today }: Sketch): Drawn {
  const data = seasonFor(year, plan).climate;
  const about = today ?? data.observedWeather.at(-1)?.[0] ?? null;
  const known = data.observedWeather
    .filter(([day]) => about !== null && day >= plus(about, -DAYS_BEHIND))
    .map(([day, { lowC, highC }]) => ({ day, lowC, highC }));
  return {
    known,
    actual: climateFrom(data),
    usual: climateFrom({ ...data, observedWeather: [], measuredSoil: [] }),
  };
}

/** How the last weeks were, in words; that nothing is known where it is not. */
function comparison({ year, plan, today }: Sketch, { known, actual }: Drawn): string {
  const weeks = today === null ? null : weeksBefore(seasonFor(year, plan).climate, today);
  if (today === null || weeks === null) return "Nothing is known of this season's weather yet.";
  const { since, warmerK } = weeks;
  const off = sayQuantity({ kind: "difference", si: Math.abs(warmerK), said: null }, plan.measures);
  const air =
    Math.abs(warmerK) < WORTH_SAYING_K
      ? "as warm as usual"
      : `${off} ${warmerK > 0 ? "warmer" : "colder"} than usual`;
  const rain = rainOf(
    known.filter(({ day }) => day < today && day >= since),
    actual,
  );
  return `The days since ${sayDay(since)} were ${air}.${rainText(rain, plan.measures)}`;
}

function fieldOf(
  { plan, today }: Sketch,
  { known, usual }: Drawn,
  { sheet, months }: { readonly sheet: PictureSheet; readonly months: number },
): TemperatureField {
  const topPx = months + 3.4 * sheet.smallPx;
  const { leftPx, rightPx } = marginsOf(sheet);
  const about = today ?? known.at(-1)?.day ?? (0 as Day);
  const all = [about, ...known.map(({ day }) => day)];
  const shown = wholeMonths(earliest(...all), latest(...all));
  const usualDays = sampleDays({ ...shown, leftPx, rightPx }, 3).map((day) => usual.air(day));
  const days = [...known, ...usualDays];
  const span = readableRange(plan.measures, {
    leastC: Math.min(...days.map(({ lowC }) => lowC)) - 1,
    mostC: Math.max(...days.map(({ highC }) => highC)) + 1,
  });
  const belowPx = RAIN_HIGH_PX + 8 * sheet.smallPx;
  return {
    scale: { ...shown, leftPx: leftPx + axisPx(plan.measures, span, sheet), rightPx },
    topPx,
    lowPx: sheet.heightPx === null ? topPx + PHONE_HIGH_PX : sheet.heightPx - belowPx,
    ...span,
  };
}

/** Days from one point of the band's edges to the next. Source: house rule; the curve between is smooth. */
const POINT_DAYS = 3;

function usualBand({ usual }: Drawn, field: TemperatureField): string {
  const days = sampleDays(field.scale, POINT_DAYS);
  const edge = (of: "lowC" | "highC") =>
    days.map((day) => ({ x: xOf(field.scale, day + 0.5), y: yOf(field, usual.air(day)[of]) }));
  return element("path", {
    id: "weather-usual",
    class: "warm",
    "fill-opacity": "0.34",
    d: outlineOf(edge("highC"), edge("lowC")),
  });
}

function freezingLine(field: TemperatureField): string {
  const { leftPx, rightPx } = field.scale;
  if (field.leastC > 0) return "";
  const y = yOf(field, 0);
  return element("path", {
    id: "weather-freezing",
    class: "ice-line",
    "stroke-width": 1,
    "stroke-dasharray": "5 3",
    d: curveOf([
      { x: leftPx, y },
      { x: rightPx, y },
    ]),
  });
}

/** Strokes of the days behind and of those ahead, today with these; each day's stroke stands in the middle of its room. */
function dayStrokes(
  { today }: Sketch,
  { known }: Drawn,
  field: TemperatureField,
): readonly string[] {
  const roomPx = xOf(field.scale, 1) - xOf(field.scale, 0);
  const stroke = (id: string, days: readonly KnownDay[], more: Record<string, string>) =>
    days.length === 0
      ? []
      : [
          element("path", {
            id,
            class: "soil-line",
            "stroke-width": Math.min(4, roomPx * 0.55),
            ...more,
            d: days
              .map(
                ({ day, lowC, highC }) =>
                  `M${tenth(xOf(field.scale, day + 0.5))} ${tenth(yOf(field, lowC))}V${tenth(yOf(field, highC))}`,
              )
              .join(""),
          }),
        ];
  const isAhead = ({ day }: KnownDay) => today !== null && day >= today;
  return [
    ...stroke(
      "weather-behind",
      known.filter((each) => !isAhead(each)),
      {},
    ),
    ...stroke("weather-ahead", known.filter(isAhead), { "stroke-opacity": "0.55" }),
  ];
}
