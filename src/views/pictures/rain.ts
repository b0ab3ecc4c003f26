import { type Day, type Measures, sayDay } from "../../base/index.ts";
import type { Climate } from "../../engine/index.ts";
import { type Scale, xOf } from "./scale.ts";
import type { PictureSheet } from "./sheet.ts";
import { element, tenth, textLine } from "./svg.ts";

/** The height of the strip that rain is drawn in [px]. */
export const RAIN_HIGH_PX = 60;

/** The rain that fills its strip [mm a day], where no day has more. Source: house rule: a wet day. */
const LEAST_FULL_MM = 10;

/** The rain of a day [mm]. */
export type RainyDay = { readonly day: Day; readonly mm: number };

/** The rain of those days of which it is known, dry ones too, in their order. */
export function rainOf(
  days: readonly { readonly day: Day }[],
  { rainMm }: Pick<Climate, "rainMm">,
): readonly RainyDay[] {
  return days.flatMap(({ day }) => {
    const mm = rainMm(day);
    return mm === null ? [] : [{ day, mm }];
  });
}

/** How much rain fell in all, as a sentence behind another; empty where nothing is known of it. */
export function rainText(rain: readonly RainyDay[], measures: Measures): string {
  if (rain.length === 0) return "";
  return ` ${sayRain(
    rain.reduce((sum, { mm }) => sum + mm, 0),
    measures,
  )} of rain fell.`;
}

/** Rain as gauges have it: whole millimetres, tenths of an inch. */
function sayRain(mm: number, measures: Measures): string {
  return measures === "us" ? `${Math.round(mm / 2.54) / 10} in` : `${Math.round(mm)} mm`;
}

/** The rain of each day as a bar on the strip's foot, and the wettest day in words; nothing where none fell. */
export function rainBars(
  rain: readonly RainyDay[],
  scale: Scale,
  {
    topPx,
    measures,
    sheet,
  }: { readonly topPx: number; readonly measures: Measures; readonly sheet: PictureSheet },
): readonly string[] {
  const wet = rain.filter(({ mm }) => mm > 0);
  const [first] = wet;
  if (!first) return [];
  const wettest = wet.reduce((most, each) => (each.mm > most.mm ? each : most), first);
  const full = Math.max(LEAST_FULL_MM, wettest.mm);
  const low = topPx + RAIN_HIGH_PX;
  const widthPx = Math.max(1, (xOf(scale, 1) - xOf(scale, 0)) * 0.7);
  const bars = wet.map(({ day, mm }) => {
    const x = tenth(xOf(scale, day + 0.5) - widthPx / 2);
    const high = (mm / full) * RAIN_HIGH_PX;
    return `M${x} ${tenth(low)}v${tenth(-high)}h${tenth(widthPx)}v${tenth(high)}Z`;
  });
  const text = `rain, at most ${sayRain(wettest.mm, measures)} on ${sayDay(wettest.day)}`;
  return [
    element("path", { id: "weather-rain", class: "ice", d: bars.join("") }),
    textLine(
      { x: scale.leftPx, y: topPx - 0.2 * sheet.smallPx, sizePx: sheet.smallPx, from: "start" },
      { text, ink: "pencil", look: "aside" },
    ),
  ];
}
