import type { BedRow } from "./beds.ts";
import { widthOf } from "./measure.ts";
import { marginsOf, type PictureSheet, paragraph, type TextBlock } from "./sheet.ts";
import type { Eaten } from "./stature.ts";
import { element, tenth, textLine } from "./svg.ts";

/** The meaning of each colour of plant. */
const EATEN: readonly (readonly [Eaten, string])[] = [
  ["leaf", "leaves"],
  ["root", "roots and bulbs"],
  ["fruit", "fruit"],
];

/** What the picture shows that needs explaining: its beds, and whether there is frost. */
export type KeyContent = { readonly rows: readonly BedRow[]; readonly frost: boolean };

/** How to read what is drawn; nothing about what is not. */
function keyText({ rows, frost }: KeyContent): string {
  const lives = rows.flatMap(({ plants }) => plants).flatMap((plant) => plant.lives);
  return [
    lives.length > 0
      ? "Each leaf grows from the day it goes in to its first harvest, and fades where its end is not certain."
      : "",
    lives.some(({ out }) => out !== null) ? "Hanging from a thin line: indoors." : "",
    frost ? "Blue air: frost is likely." : "",
    "Brown ground: the soil is warm.",
  ]
    .filter(Boolean)
    .join(" ");
}

/** How the season's picture is to be read, with the colours of the plants that are in it; `endsPx` is the y below. */
export function keyFoot(sheet: PictureSheet, content: KeyContent, y: number): TextBlock {
  const { smallPx } = sheet;
  const margins = marginsOf(sheet);
  const crops = content.rows
    .flatMap(({ plants }) => plants)
    .flatMap((plant) => (plant.crop && plant.lives.length > 0 ? [plant.crop] : []));
  const seen = new Set(crops.map((crop) => crop.eaten));
  const eatens = EATEN.filter(([eaten]) => seen.has(eaten));
  let x = margins.leftPx;
  const swatches = eatens.map(([eaten, label]) => {
    const swatch = [
      leaf(eaten, x, y + 2 * smallPx),
      textLine(
        { x: x + 34, y: y + 2 * smallPx, sizePx: smallPx, from: "start" },
        { text: label, ink: "pencil", look: "plain" },
      ),
    ];
    x += 34 + widthOf(label, smallPx) + 14;
    return swatch.join("");
  });
  const below = paragraph(keyText(content), margins, {
    y: y + (eatens.length > 0 ? 3.7 : 2) * smallPx,
    sizePx: smallPx,
  });
  return { ...below, svg: [...swatches, ...below.svg] };
}

/** Half a leaf on its line, as the plants are drawn. */
function leaf(eaten: Eaten, x: number, y: number): string {
  const at = `M${tenth(x)} ${tenth(y)}`;
  return element("path", { class: eaten, d: `${at}c8 -1 10 -11 17 -11c5 0 6 10 11 11z` });
}
