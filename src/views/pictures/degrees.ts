import { celsius, degreesC, fahrenheit, type Measures, sayQuantity } from "../../base/index.ts";
import { widthOf } from "./measure.ts";
import type { Scale } from "./scale.ts";
import type { PictureSheet } from "./sheet.ts";
import { textLine } from "./svg.ts";

/** Where temperatures are drawn: days across, degrees upwards from `lowPx` to `topPx` [px], from the least to the most [°C]. */
export type TemperatureField = {
  readonly scale: Scale;
  readonly topPx: number;
  readonly lowPx: number;
  readonly leastC: number;
  readonly mostC: number;
};

/** The y [px] of a temperature [°C]; never outside the field. */
export function yOf({ topPx, lowPx, leastC, mostC }: TemperatureField, tempC: number): number {
  const share = (tempC - leastC) / (mostC - leastC);
  return lowPx - Math.min(1, Math.max(0, share)) * (lowPx - topPx);
}

/** Round temperatures [°C] in the household's measures, every 10 °F or 5 °C, inside the field. */
export function roundDegrees(
  measures: Measures,
  { leastC, mostC }: Pick<TemperatureField, "leastC" | "mostC">,
): readonly number[] {
  const [step, into, back] =
    measures === "us" ? [10, fahrenheit, celsius] : [5, (c: number) => c, (c: number) => c];
  const first = Math.ceil(into(leastC) / step);
  const last = Math.floor(into(mostC) / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => back((first + i) * step));
}

/** Space between the axis and the field [px]. */
const AXIS_GAP_PX = 8;

/** Room the axis takes left of the field [px]: its widest label and a space. */
export function axisPx(
  measures: Measures,
  span: Pick<TemperatureField, "leastC" | "mostC">,
  { smallPx }: PictureSheet,
): number {
  const widths = roundDegrees(measures, span).map((tempC) =>
    widthOf(degreesText(tempC, measures), smallPx),
  );
  return Math.max(0, ...widths) + AXIS_GAP_PX;
}

/** The axis: each round temperature at its height, ending a space left of the field. */
export function degreeLabels(
  measures: Measures,
  field: TemperatureField,
  { smallPx }: PictureSheet,
): readonly string[] {
  const at = { x: field.scale.leftPx - AXIS_GAP_PX, sizePx: smallPx, from: "end" } as const;
  return roundDegrees(measures, field).map((tempC) =>
    textLine(
      { ...at, y: yOf(field, tempC) + smallPx * 0.3 },
      { text: degreesText(tempC, measures), ink: "pencil", look: "plain" },
    ),
  );
}

function degreesText(tempC: number, measures: Measures): string {
  return sayQuantity(degreesC(tempC), measures);
}

/** The least and the most of an axis [°C], so far apart that two round temperatures lie between: one alone is no scale. */
export function readableRange(
  measures: Measures,
  { leastC, mostC }: Pick<TemperatureField, "leastC" | "mostC">,
): Pick<TemperatureField, "leastC" | "mostC"> {
  let span = { leastC, mostC };
  while (roundDegrees(measures, span).length < 2)
    span = { leastC: span.leastC - 1, mostC: span.mostC + 1 };
  return span;
}
