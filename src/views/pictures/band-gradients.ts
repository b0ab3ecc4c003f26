import type { Day } from "../../base/index.ts";
import { chanceOfFrostAfter } from "../../engine/index.ts";
import type { Bed, Plan } from "../../garden/model/index.ts";
import { BAND_OPACITY, type Ink } from "./palette.ts";
import { type Scale, sampleDays, xOf } from "./scale.ts";
import type { DrawnSeason } from "./sketch.ts";
import { element } from "./svg.ts";
import { soilIn } from "./warmth.ts";

/** The chance, 0 to 1, that frost is still to come this spring or has come this autumn; 0 where there is none. */
export function chanceOfFrost({ site }: Pick<Plan, "site">, day: Day): number {
  const spring = site.lastFrost ? chanceOfFrostAfter(site.lastFrost, day) : 0;
  const autumn = site.firstFrost ? 1 - chanceOfFrostAfter(site.firstFrost, day) : 0;
  return Math.max(spring, autumn);
}

/**
 * Soil at which the band begins, and at which it is strongest [°C]. Source: house rule; below 4 °C hardly anything
 * grows.
 */
const [COLD_C, WARM_C] = [4, 20];

/** How warm the usual soil of a bed looks on a day, 0 to 1. */
export function warmthShown(drawn: DrawnSeason, bed: Bed | null): (day: Day) => number {
  const soil = soilIn(drawn, bed);
  return (day) => Math.min(1, Math.max(0, (soil(day).usualC - COLD_C) / (WARM_C - COLD_C)));
}

/** Days from one stop of a band to the next. Source: house rule; between them the colour is blended. */
const STOP_DAYS = 6;

/** A band across the scale, as strong as `share` gives for each day; stops that change nothing are left out. */
export function bandGradient(
  id: string,
  ink: Extract<Ink, keyof typeof BAND_OPACITY>,
  { scale, share }: { readonly scale: Scale; readonly share: (day: Day) => number },
): string {
  const { leftPx, rightPx } = scale;
  const stops = sampleDays(scale, STOP_DAYS).map((day) => ({
    offset: ((xOf(scale, day) - leftPx) / (rightPx - leftPx)).toFixed(3),
    opacity: (BAND_OPACITY[ink] * share(day)).toFixed(2),
  }));
  const needed = stops.filter(
    ({ opacity }, i) => stops[i - 1]?.opacity !== opacity || stops[i + 1]?.opacity !== opacity,
  );
  return element(
    "linearGradient",
    { id, gradientUnits: "userSpaceOnUse", x1: leftPx, x2: rightPx, y1: 0, y2: 0 },
    ...needed.map(({ offset, opacity }) =>
      element("stop", { class: `${ink}-stop`, offset, "stop-opacity": opacity }),
    ),
  );
}
