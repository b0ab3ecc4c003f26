import type { BedRow } from "./beds.ts";
import { familyColours } from "./families.ts";
import { widthOf } from "./measure.ts";
import type { FamilyInk } from "./palette.ts";
import { marginsOf, type PictureSheet, paragraph, type TextBlock } from "./sheet.ts";
import { element, tenth, textLine } from "./svg.ts";

/** What the picture shows that needs explaining: its beds, and whether there is frost. */
export type KeyContent = { readonly rows: readonly BedRow[]; readonly frost: boolean };

/** How to read what is drawn; nothing about what is not. */
function keyText({ rows, frost }: KeyContent): string {
  const lives = rows.flatMap(({ plants }) => plants).flatMap((plant) => plant.lives);
  return [
    lives.length > 0
      ? "Each leaf grows from the day it goes in to its first harvest, and fades where its end is not certain."
      : "",
    lives.some(({ ready }) => ready)
      ? "Thick line on the soil: you eat of it, dashed where its end is not certain."
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
  const swatches = swatchesOf(familyColours(crops.map(({ family }) => family)), sheet);
  const rows = swatches.map((row, i) =>
    drawSwatches(row, sheet, y + (2 + i * SWATCH_EM) * smallPx),
  );
  const below = paragraph(keyText(content), margins, {
    y: y + (2 + rows.length * SWATCH_EM) * smallPx,
    sizePx: smallPx,
  });
  return { ...below, svg: [...rows.flat(), ...below.svg] };
}

type Swatch = ReturnType<typeof familyColours>[number];

/** Height of a row of swatches [of its small type], room for a leaf before its name and for air behind it [px]. */
const SWATCH_EM = 1.7;
const [LEAF_PX, AFTER_PX] = [34, 14];

const swatchPx = ({ name }: Swatch, sheet: PictureSheet) =>
  LEAF_PX + widthOf(name, sheet.smallPx) + AFTER_PX;

/** Swatches in rows as wide as the sheet. */
function swatchesOf(all: readonly Swatch[], sheet: PictureSheet): readonly (readonly Swatch[])[] {
  const { leftPx, rightPx } = marginsOf(sheet);
  const rows: Swatch[][] = [];
  let x = rightPx;
  for (const swatch of all) {
    const widthPx = swatchPx(swatch, sheet);
    if (x + widthPx - AFTER_PX > rightPx) {
      rows.push([]);
      x = leftPx;
    }
    rows.at(-1)?.push(swatch);
    x += widthPx;
  }
  return rows;
}

function drawSwatches(row: readonly Swatch[], sheet: PictureSheet, y: number): readonly string[] {
  let x = marginsOf(sheet).leftPx;
  return row.flatMap((swatch) => {
    const spot = { x: x + LEAF_PX, y, sizePx: sheet.smallPx, from: "start" } as const;
    const drawn = [
      leaf(swatch.ink, x, y),
      textLine(spot, { text: swatch.name, ink: "pencil", look: "plain" }),
    ];
    x += swatchPx(swatch, sheet);
    return drawn;
  });
}

/** Half a leaf on its line, as the plants are drawn. */
function leaf(ink: FamilyInk, x: number, y: number): string {
  const at = `M${tenth(x)} ${tenth(y)}`;
  return element("path", { class: ink, d: `${at}c8 -1 10 -11 17 -11c5 0 6 10 11 11z` });
}
