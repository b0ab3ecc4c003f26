import { type Day, plus } from "../../base/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import { curveOf, outlineOf, type Point } from "./curve.ts";
import { type TemperatureField, yOf } from "./degrees.ts";
import type { Box } from "./labels.ts";
import { sampleDays, xInside, xOf } from "./scale.ts";
import type { DrawnSeason } from "./sketch.ts";
import { element, tenth } from "./svg.ts";
import { type Soil, soilIn } from "./warmth.ts";

/** Days from one point of a line to the next. Source: house rule; the curve between is smooth. */
const POINT_DAYS = 3;

/** The band from cool to warm (`soil-band`), the usual line in it (`soil-usual`), and where there is a bed under film its own (`soil-film`). */
export function soilLines(
  drawn: DrawnSeason,
  film: Bed | null,
  field: TemperatureField,
): readonly string[] {
  const { leftPx, rightPx } = field.scale;
  const along = (soil: (day: Day) => Soil, which: keyof Soil): readonly Point[] =>
    sampleDays(field.scale, POINT_DAYS).map((day) => ({
      x: xOf(field.scale, day),
      y: yOf(field, soil(day)[which]),
    }));
  const open = soilIn(drawn, null);
  const [warm, cool, usual] = [along(open, "warmC"), along(open, "coolC"), along(open, "usualC")];
  return [
    element("path", {
      id: "soil-band",
      class: "warm",
      "fill-opacity": "0.34",
      d: outlineOf(warm, cool),
    }),
    element("path", {
      class: "soil-line",
      "stroke-width": 0.8,
      d: `M${tenth(leftPx)} ${tenth(field.lowPx)}H${tenth(rightPx)}`,
    }),
    ...(film ? [dotted(along(soilIn(drawn, film), "usualC"))] : []),
    element("path", {
      id: "soil-usual",
      class: "soil-line",
      "stroke-width": 2.6,
      d: curveOf(usual),
    }),
  ];
}

function dotted(points: readonly Point[]): string {
  return element("path", {
    id: "soil-film",
    class: "soil-line",
    "stroke-width": 1.8,
    "stroke-dasharray": "1.5 4",
    "stroke-linecap": "round",
    d: curveOf(points),
  });
}

/** Room kept clear above and below a line [px]. */
const CLEAR_PX = 2;

/** The room the usual line and the line under film take, in upright pieces: no words stand on it. */
export function lineBoxes(
  drawn: DrawnSeason,
  film: Bed | null,
  field: TemperatureField,
): readonly Box[] {
  const soils = [soilIn(drawn, null), ...(film ? [soilIn(drawn, film)] : [])];
  return soils.flatMap((soil) =>
    sampleDays(field.scale, POINT_DAYS).map((day) => {
      const next = plus(day, POINT_DAYS);
      const [x, to] = [xInside(field.scale, day), xInside(field.scale, next)];
      const ys = [day, next].map((each) => yOf(field, soil(each).usualC));
      const y = Math.min(...ys) - CLEAR_PX;
      return { x, y, widthPx: to - x, heightPx: Math.max(...ys) + CLEAR_PX - y };
    }),
  );
}

/** The room the band and the line under film take, in upright pieces: words stay off it where they can. */
export function bandBoxes(
  drawn: DrawnSeason,
  film: Bed | null,
  field: TemperatureField,
): readonly Box[] {
  const [open, warmest] = [soilIn(drawn, null), soilIn(drawn, film)];
  return sampleDays(field.scale, POINT_DAYS).map((day) => {
    const y = yOf(field, Math.max(open(day).warmC, warmest(day).usualC));
    const widthPx = xOf(field.scale, plus(day, POINT_DAYS)) - xOf(field.scale, day);
    return { x: xOf(field.scale, day), y, widthPx, heightPx: yOf(field, open(day).coolC) - y };
  });
}
