import type { TemperatureField } from "./degrees.ts";
import { allFree, type Box, boxOf } from "./labels.ts";
import type { PictureSheet } from "./sheet.ts";
import { element, type TextRun, type TextSpot, tenth, textLine } from "./svg.ts";

/** Where the words beside a mark may stand. */
export type LabelArea = {
  readonly field: TemperatureField;
  readonly sheet: PictureSheet;
  readonly within: Box;
  readonly taken: readonly Box[];
  /** Where the soil's own lines run. */
  readonly band: readonly Box[];
};

/** Words on one side of a mark, line by line, from the x [px] they begin or end at. */
export type LabelSide = {
  readonly from: "start" | "end";
  readonly at: number;
  readonly lines: readonly (readonly TextRun[])[];
};

/** A mark on the drawing, and its words by the sides they may stand on, the best first. */
export type LabelMark = {
  readonly x: number;
  readonly y: number;
  readonly sides: readonly LabelSide[];
  readonly dot: string;
};

/** Steps [px] by which words move down or up until they find room. */
const STEPS = [0, 10, -10, 20, -20, 32, -32, 46, -46, 60, -60, 80, -80, 100, -100];

/** Steps up to this one [px] keep words beside their mark. */
const NEAR_PX = 46;

/** The words of a mark on its own height, else moved, off the band if they can be, with a fine line that leads to them; adds their room to `taken`. Empty where there is no room. */
export function labelBeside(
  mark: LabelMark,
  { sheet, within, band }: LabelArea,
  taken: Box[],
): readonly string[] {
  for (const others of [[...taken, ...band], taken])
    for (const { side, step } of placesOf(mark)) {
      const set = wordsOf(side, mark.y + step, sheet);
      const boxes = set.map(({ spot, runs }) => boxOf(spot, runs));
      if (!allFree(boxes, within, others)) continue;
      taken.push(...boxes);
      return [
        leaderLine(mark, side, step),
        ...set.map(({ spot, runs }) => textLine(spot, ...runs)),
      ];
    }
  return [];
}

/** Every side at every step, the better side first as long as it is near. */
function placesOf({
  sides,
}: LabelMark): readonly { readonly side: LabelSide; readonly step: number }[] {
  const near = (step: number) => Math.abs(step) <= NEAR_PX;
  return [STEPS.filter(near), STEPS.filter((step) => !near(step))].flatMap((steps) =>
    sides.flatMap((side) => steps.map((step) => ({ side, step }))),
  );
}

/** The lines of a side, names larger than the rest. */
function wordsOf({ from, at, lines }: LabelSide, y: number, { namePx, smallPx }: PictureSheet) {
  return lines.map((runs, i): { readonly spot: TextSpot; readonly runs: readonly TextRun[] } => ({
    spot: {
      x: at,
      y: y + (0.3 + i * 1.2) * namePx,
      sizePx: runs[0]?.look === "name" ? namePx : smallPx,
      from,
    },
    runs,
  }));
}

function leaderLine({ x, y }: LabelMark, { from, at }: LabelSide, step: number): string {
  const [near, far] = from === "start" ? [x + 5, at - 4] : [x - 5, at + 4];
  const d = `M${tenth(near)} ${tenth(y)}L${tenth(far)} ${tenth(y + step)}`;
  return element("path", { class: "pencil-line", "stroke-width": 0.8, d });
}
