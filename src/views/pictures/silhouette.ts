import { type Day, latest, plus } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import type { Life } from "../../engine/index.ts";
import { curveOf, outlineOf, type Point } from "./curve.ts";
import { familyInk } from "./families.ts";
import type { FamilyInk } from "./palette.ts";
import { type Scale, shows, xInside, xOf } from "./scale.ts";
import { type Eaten, heightOn, lobesOf, STATURE } from "./stature.ts";
import { type Attributes, element, tenth } from "./svg.ts";

/** Where a sowing is drawn: the y of its bed's soil line, and the room above and below it [px]. */
export type LaneGround = {
  readonly scale: Scale;
  readonly soilY: number;
  readonly topPx: number;
  readonly rootPx: number;
};

/** Days between two, so many steps apart, both ends with them; parts of days count. */
function between(from: Day, to: Day, steps: number): readonly number[] {
  return Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
}

/** Days as far as the scale has them, each once. */
function within({ from, to }: Scale, days: readonly number[]): readonly number[] {
  return [...new Set(days.map((day) => Math.min(to + 1, Math.max(from, day))))];
}

/** The outline above the soil, from the day it goes in to the day it is gone. */
function topOf(life: Life, ground: LaneGround, eaten: Eaten): readonly Point[] {
  const { scale, soilY, topPx } = ground;
  const from = life.out ?? life.up;
  const height = topPx * STATURE[eaten].top;
  const at = (day: number, share: number): Point => ({
    x: xInside(scale, day),
    y: soilY - share * height,
  });
  const lobes = lobesOf(life, scale, eaten).map(({ day, tip }) =>
    at(day, heightOn(life, day) * (tip ? 1 : 1 - STATURE[eaten].notch)),
  );
  const ends = [from, life.gone].map((day) =>
    at(day, day < scale.from || day > scale.to ? heightOn(life, xDay(scale, day)) : 0),
  );
  return [at(life.out ?? life.starts, 0), ...ends.slice(0, 1), ...lobes, ...ends.slice(1)];
}

/** A day as far as the scale has it. */
function xDay({ from, to }: Scale, day: number): number {
  return Math.min(to, Math.max(from, day));
}

/** Its outline below the soil: nothing on the day it goes in, most from the first harvest on. */
function rootOf(life: Life, { scale, soilY, rootPx }: LaneGround, eaten: Eaten): readonly Point[] {
  const from = life.out ?? life.starts;
  const depth = rootPx * STATURE[eaten].root;
  const share = (day: number) => {
    if (day < life.full) return ((day - from) / (life.full - from)) ** 0.8;
    return day <= life.ends ? 1 : (life.gone - day) / (life.gone - life.ends);
  };
  const days = [...between(from, life.full, 3), life.ends, life.gone];
  return within(scale, days).map((day) => ({
    x: xInside(scale, day),
    y: soilY + depth * Math.max(0, share(day)),
  }));
}

/** Veins of the leaf: one from the soil line to near each tip, leaning forward as the blade does. */
function veins(life: Life, ground: LaneGround, eaten: Eaten): string {
  const { scale, soilY, topPx } = ground;
  const { top, lobes } = STATURE[eaten];
  const lobePx = (xOf(scale, life.full) - xOf(scale, life.out ?? life.up)) / lobes;
  return lobesOf(life, scale, eaten)
    .filter(({ day, tip }) => tip && day <= life.ends)
    .map(({ day }) => {
      const rise = heightOn(life, day) * topPx * top * 0.78;
      const lean = Math.min(rise * 0.6, lobePx * 1.1);
      const x = xInside(scale, day) - lean;
      if (rise < 5 || x < scale.leftPx) return "";
      return `M${tenth(x)} ${tenth(soilY)}c${tenth(lean * 0.1)} ${tenth(-rise * 0.5)} ${tenth(lean * 0.5)} ${tenth(-rise * 0.8)} ${tenth(lean)} ${tenth(-rise)}`;
    })
    .join("");
}

type Look = { readonly ground: LaneGround; readonly ink: FamilyInk };

/** The fill of a sowing: solid while it grows, fading from the day it ends to the day the last of it is gone. */
function shade(id: string, life: Life, { ground: { scale }, ink }: Look): string {
  const [x1, x2] = [xInside(scale, life.ends), xInside(scale, life.gone)];
  const stop = (offset: string, opacity: string) =>
    element("stop", { class: `${ink}-stop`, offset, "stop-opacity": opacity });
  const along = { gradientUnits: "userSpaceOnUse", x1, x2: Math.max(x1 + 1, x2), y1: 0, y2: 0 };
  return element("linearGradient", { id, ...along }, stop("0", "1"), stop("1", "0.12"));
}

/**
 * One sowing drawn: its outline filled in its colour, with veins; `id` is its own in the picture. An edge in the
 * paper's colour separates it from what is behind it.
 */
export function silhouette(
  id: string,
  life: Life,
  { crop, ground }: { readonly crop: Crop; readonly ground: LaneGround },
): string {
  const { eaten, family } = crop;
  const ink = familyInk(family);
  const top = topOf(life, ground, eaten);
  const d = outlineOf(top, rootOf(life, ground, eaten));
  const stands = xInside(ground.scale, life.ends);
  const paper = { class: "paper-line", "stroke-linecap": "round" };
  return [
    shade(id, life, { ground, ink }),
    element("path", {
      ...paper,
      "stroke-width": 2.2,
      d: curveOf(top.filter(({ x, y }) => y < ground.soilY - 1 && x <= stands)),
    }),
    element("path", { fill: `url(#${id})`, d }),
    element("path", {
      ...paper,
      "stroke-width": 0.8,
      "stroke-opacity": "0.6",
      d: veins(life, ground, eaten),
    }),
    life.out === null ? seed(life.starts, { ground, ink }) : shelf(life, life.out, { ground, ink }),
  ].join("");
}

/** The seed, clove or tuber in the ground on the day it goes in. */
function seed(day: Day, { ground: { scale, soilY }, ink }: Look): string {
  if (!shows(scale, day)) return "";
  return element("ellipse", {
    class: ink,
    cx: xOf(scale, day),
    cy: soilY + 3.6,
    rx: 2.8,
    ry: 2.2,
  });
}

/** What grows indoors: hanging from a thin line until it goes out, and its way down to the bed. */
function shelf(life: Life, out: Day, { ground, ink }: Look): string {
  const { scale, soilY, topPx } = ground;
  const y = soilY - topPx * 0.85;
  const [x1, x2] = [xInside(scale, life.starts), xInside(scale, out)];
  const hang = [0, 0.05, 0.13, 0.22, 0.29, 0.31, 0.25, 0].map((share, i) => ({
    x: x1 + (x2 - x1) * Math.min(1, i * 0.155),
    y: y + topPx * share,
  }));
  const flat = [hang[0], hang[hang.length - 1]].flatMap((point) => point ?? []);
  const way = `M${tenth(x2)} ${tenth(y)}C${tenth(x2 + 5)} ${tenth(y + topPx * 0.3)} ${tenth(x2 - 4)} ${tenth(soilY - topPx * 0.3)} ${tenth(x2)} ${tenth(soilY)}`;
  return [
    element("path", { class: ink, d: outlineOf(flat, hang) }),
    element("path", {
      class: "soil-line",
      "stroke-width": 1.2,
      d: `M${tenth(x1)} ${tenth(y)}H${tenth(x2)}`,
    }),
    element("path", {
      class: `${ink}-line`,
      "stroke-width": 1,
      "stroke-dasharray": "1 3",
      "stroke-linecap": "round",
      d: way,
    }),
  ].join("");
}

/** How thick the line is on which one eats of a sowing, and the rim of paper round it [px]. */
const [EATING_PX, RIM_PX] = [3.4, 1.2];

/**
 * The line on the soil from the first day one eats of a sowing to the last, dashed where its end is not certain; nothing where
 * it does not get ready.
 */
export function eatingLine(
  { ready, full, ends, gone }: Life,
  { scale, soilY }: LaneGround,
): string {
  if (!ready || full > scale.to || gone <= scale.from) return "";
  const sure = latest(ends, plus(full, 1));
  const path = (from: Day, to: Day, look: Attributes) => {
    const d = `M${tenth(xInside(scale, from))} ${tenth(soilY)}H${tenth(xInside(scale, to))}`;
    return element("path", { class: "ink-line", "stroke-width": EATING_PX, ...look, d });
  };
  return [
    path(full, latest(sure, gone), { class: "paper-line", "stroke-width": EATING_PX + 2 * RIM_PX }),
    path(full, sure, {}),
    gone > sure ? path(sure, gone, { "stroke-dasharray": "3 2.5" }) : "",
  ].join("");
}
