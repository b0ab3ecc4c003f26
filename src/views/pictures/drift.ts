import type { Day } from "../../base/index.ts";
import { chanceOfFrostAfter, firstFrostAt, lastFrostAt } from "../../engine/index.ts";
import type { FrostDates } from "../../garden/model/index.ts";
import { curveOf, outlineOf, type Point } from "./curve.ts";
import { type Scale, sampleDays, shows, xInside } from "./scale.ts";
import { element } from "./svg.ts";

/** Where the drifts lie [px]: on the ground at `groundPx`, reaching to `topPx` where frost is certain. */
export type FrostField = {
  readonly scale: Scale;
  readonly topPx: number;
  readonly groundPx: number;
};

/** Frost still to come in spring, or come already in autumn. */
export type FrostSeason = "spring" | "autumn";

/** The chance on a day, 0 to 1: falling through spring, rising through autumn. */
export function chanceOn(dates: FrostDates, frostSeason: FrostSeason, day: Day): number {
  const after = chanceOfFrostAfter(dates, day);
  return frostSeason === "spring" ? after : 1 - after;
}

/** Where the edge of the drift stands on a day. */
export function edgeAt(
  dates: FrostDates,
  frostSeason: FrostSeason,
  { day, field }: { readonly day: Day; readonly field: FrostField },
): Point {
  const { scale, topPx, groundPx } = field;
  const y = groundPx - chanceOn(dates, frostSeason, day) * (groundPx - topPx);
  return { x: xInside(scale, day), y };
}

/** The x [px] at which the drift has a height, given as its chance. */
export function xAtChance(
  dates: FrostDates,
  frostSeason: FrostSeason,
  { chance, field }: { readonly chance: number; readonly field: FrostField },
): number {
  const share = Math.min(0.99, Math.max(0.01, chance));
  const day = frostSeason === "spring" ? lastFrostAt(dates, share) : firstFrostAt(dates, share);
  return xInside(field.scale, day);
}

/** Chance below which a drift has melted: it would be thinner than the line it is drawn with. */
const LEAST_CHANCE = 0.003;

/** Days from one point of the edge to the next; the garden's own dates are always points. Source: house rule. */
const POINT_DAYS = 4;

/** One drift, named `frost-spring` or `frost-autumn`: its body, its edge, and a mark at each of the garden's own three dates. */
export function drawDrift(dates: FrostDates, frostSeason: FrostSeason, field: FrostField): string {
  const own = [dates.early, dates.usual, dates.late];
  const at = (day: Day) => edgeAt(dates, frostSeason, { day, field });
  const days = [...new Set([...sampleDays(field.scale, POINT_DAYS), ...own])]
    .filter((day) => chanceOn(dates, frostSeason, day) > LEAST_CHANCE && shows(field.scale, day))
    .sort((a, b) => a - b);
  const points = days.map(at);
  const ground = [points[0], points[points.length - 1]].flatMap((point) =>
    point ? [{ x: point.x, y: field.groundPx }] : [],
  );
  return element(
    "g",
    { id: `frost-${frostSeason}` },
    element("path", { class: "frost", "fill-opacity": "0.5", d: outlineOf(points, ground) }),
    element("path", {
      class: "ice-line",
      "stroke-width": 2.4,
      "stroke-linecap": "round",
      d: curveOf(points),
    }),
    ...own.map(at).map(({ x, y }) => element("circle", { class: "ice", cx: x, cy: y, r: 4 })),
  );
}
