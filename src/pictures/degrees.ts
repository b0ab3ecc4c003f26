import { celsius, degreesC, fahrenheit, type Measures } from "../quantities/quantity.ts";
import { sayQuantity } from "../quantities/say.ts";
import type { Wish } from "./labels.ts";
import type { Scale } from "./scale.ts";
import type { Sheet } from "./sheet.ts";

/** Where temperatures are drawn: days across, degrees upwards from `lowPx` to `topPx` [px], from the least to the most [°C]. */
export type Field = {
  readonly scale: Scale;
  readonly topPx: number;
  readonly lowPx: number;
  readonly leastC: number;
  readonly mostC: number;
};

/** The y [px] of a temperature [°C]; never outside the field. */
export function yOf({ topPx, lowPx, leastC, mostC }: Field, tempC: number): number {
  const share = (tempC - leastC) / (mostC - leastC);
  return lowPx - Math.min(1, Math.max(0, share)) * (lowPx - topPx);
}

/** Round temperatures [°C] in the household's measures, every 10 °F or 5 °C, inside the field. */
export function roundDegrees(
  measures: Measures,
  { leastC, mostC }: Pick<Field, "leastC" | "mostC">,
): readonly number[] {
  const [step, into, back] =
    measures === "us" ? [10, fahrenheit, celsius] : [5, (c: number) => c, (c: number) => c];
  const first = Math.ceil(into(leastC) / step);
  const last = Math.floor(into(mostC) / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => back((first + i) * step));
}

/** The round temperatures as labels along the left, or the right where the soil's line begins there. */
export function degreesOf(measures: Measures, field: Field, { smallPx }: Sheet): readonly Wish[] {
  const at = (tempC: number) => ({ y: yOf(field, tempC) + smallPx * 0.3, sizePx: smallPx });
  return roundDegrees(measures, field).map((tempC) => ({
    lines: [[{ text: sayQuantity(degreesC(tempC), measures), ink: "pencil", look: "plain" }]],
    places: [
      [{ ...at(tempC), x: field.scale.leftPx, from: "start" }],
      [{ ...at(tempC), x: field.scale.rightPx, from: "end" }],
    ],
  }));
}
