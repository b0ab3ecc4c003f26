import type { Row } from "./beds.ts";
import { widthOf } from "./measure.ts";
import { type Lines, marginsOf, paragraph, type Sheet } from "./sheet.ts";
import type { Eaten } from "./stature.ts";
import { element, line, tenth } from "./write.ts";

/** What each colour of plant stands for. */
const EATEN: readonly (readonly [Eaten, string])[] = [
  ["leaf", "leaves"],
  ["root", "roots and bulbs"],
  ["fruit", "fruit"],
];

/** What the picture shows that wants explaining: its beds, and whether there is frost. */
export type Shown = { readonly rows: readonly Row[]; readonly frost: boolean };

/** How what is drawn is to be read, and nothing of what is not. */
function readingOf({ rows, frost }: Shown): string {
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
export function footOf(sheet: Sheet, shown: Shown, y: number): Lines {
  const { smallPx } = sheet;
  const margins = marginsOf(sheet);
  const crops = shown.rows
    .flatMap(({ plants }) => plants)
    .flatMap((plant) => (plant.crop && plant.lives.length > 0 ? [plant.crop] : []));
  const seen = new Set(crops.map((crop) => crop.eaten));
  const eatens = EATEN.filter(([eaten]) => seen.has(eaten));
  let x = margins.leftPx;
  const swatches = eatens.map(([eaten, said]) => {
    const drawn = [
      leaf(eaten, x, y + 2 * smallPx),
      line(
        { x: x + 34, y: y + 2 * smallPx, sizePx: smallPx, from: "start" },
        { text: said, ink: "pencil", look: "plain" },
      ),
    ];
    x += 34 + widthOf(said, smallPx) + 14;
    return drawn.join("");
  });
  const below = paragraph(readingOf(shown), margins, {
    y: y + (eatens.length > 0 ? 3.7 : 2) * smallPx,
    sizePx: smallPx,
  });
  return { ...below, written: [...swatches, ...below.written] };
}

/** Half a leaf on its line, as the plants are drawn. */
function leaf(eaten: Eaten, x: number, y: number): string {
  const at = `M${tenth(x)} ${tenth(y)}`;
  return element("path", { class: eaten, d: `${at}c8 -1 10 -11 17 -11c5 0 6 10 11 11z` });
}
