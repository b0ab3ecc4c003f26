import type { Measures } from "../../../base/index.ts";
import { marginsOf, type PictureSheet, paragraph, type TextBlock } from "../sheet.ts";
import { element, tenth, textLine } from "../svg.ts";
import type { SketchDetails } from "./details.ts";
import { type GroundScale, isSized } from "./ground.ts";
import type { Mark } from "./sketch.ts";

/** Lengths a ruler may have, each with its words [cm]. */
const RULERS: Readonly<Record<Measures, readonly (readonly [cm: number, said: string])[]>> = {
  us: [1, 2, 4, 10, 20, 50, 100, 300].map((feet) => [feet * 30.48, `${feet} ft`]),
  metric: [0.5, 1, 2, 5, 10, 20, 50, 100].map((metres) => [metres * 100, `${metres} m`]),
};

/** Least length of the ruler [px]. */
const LEAST_RULER_PX = 44;

/** What the foot speaks of. */
export type Foot = { readonly details: SketchDetails; readonly measures: Measures };

/** The foot of the drawing: a ruler, and how what is drawn is to be read; nothing about what is not. */
export function bedsFoot(
  sheet: PictureSheet,
  { pxPerCm }: GroundScale,
  { details, measures, y }: Foot & { readonly y: number },
): TextBlock {
  const { smallPx } = sheet;
  const margins = marginsOf(sheet);
  const rulers = RULERS[measures];
  const [cm, said] = rulers.find(([length]) => length * pxPerCm >= LEAST_RULER_PX) ??
    rulers.at(-1) ?? [100, "1 m"];
  const endX = margins.leftPx + cm * pxPerCm;
  const d = `M${tenth(margins.leftPx)} ${tenth(y - 5)}v5H${tenth(endX)}v-5`;
  const spot = { x: endX + 8, y: y + 1, sizePx: smallPx, from: "start" } as const;
  const below = paragraph(keyText(details), margins, { y: y + 1.9 * smallPx, sizePx: smallPx });
  return {
    ...below,
    svg: [
      element("path", { class: "ink-line", "stroke-width": 1.2, d }),
      textLine(spot, { text: said, ink: "pencil", look: "plain" }),
      ...below.svg,
    ],
  };
}

function keyText({ beds, rest }: SketchDetails): string {
  const marks = [...beds, rest].flatMap(({ note }) => note.marks);
  const has = (as: Mark["as"]) => marks.some((mark) => mark.as === as);
  return [
    "From above, all beds to one scale, in the order of the walk. Distances in the row are true; which row is where, you know.",
    has("cover") ? "Hatched: to be covered." : "",
    has("do") ? "Framed: something is to be done." : "",
    beds.some(({ bed }) => !isSized(bed))
      ? "Dashed: no size is given, so it is drawn like most beds."
      : "",
  ]
    .filter(Boolean)
    .join(" ");
}
