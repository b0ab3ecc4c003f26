import { type Day, sayDay } from "../../base/index.ts";
import { type Box, type LabelLayout, labelRequestAt, placeLabels } from "./labels.ts";
import { type Scale, shows, xOf } from "./scale.ts";
import type { PictureSheet } from "./sheet.ts";
import { element, tenth } from "./svg.ts";

/** From where to where today's line runs down [px]. */
export type LineExtent = { readonly topPx: number; readonly lowPx: number };

/** Today's dotted line at an x [px]. */
export function todayLine(x: number, { topPx, lowPx }: LineExtent): string {
  return element("path", {
    class: "ink-line",
    "stroke-width": 1.2,
    "stroke-dasharray": "2 3",
    d: `M${tenth(x)} ${tenth(topPx)}V${tenth(lowPx)}`,
  });
}

/** Today's line below its name, with the room that both take; `more` stands behind the day. Nothing where the scale does not have the day, or there is none. */
export function todayLabel(
  today: Day | null,
  scale: Scale,
  {
    drop,
    sheet,
    more = "",
  }: { readonly drop: LineExtent; readonly sheet: PictureSheet; readonly more?: string },
): LabelLayout {
  if (today === null || !shows(scale, today)) return { svg: [], boxes: [] };
  const x = xOf(scale, today);
  const y = drop.topPx - 0.6 * sheet.smallPx;
  const within: Box = {
    x: scale.leftPx,
    y: y - 2 * sheet.smallPx,
    widthPx: scale.rightPx - scale.leftPx,
    heightPx: 3 * sheet.smallPx,
  };
  const texts = [`today ${sayDay(today)}${more}`, `today ${sayDay(today)}`];
  const sets = texts.map((text) =>
    placeLabels(
      [
        labelRequestAt(
          x,
          { rows: [y], sizePx: sheet.smallPx },
          { text, ink: "pencil", look: "aside" },
        ),
      ],
      within,
    ),
  );
  const label = sets.find(({ boxes }) => boxes.length > 0) ?? { svg: [], boxes: [] };
  const mark: Box = { x: x - 2, y: drop.topPx, widthPx: 4, heightPx: drop.lowPx - drop.topPx };
  return { svg: [todayLine(x, drop), ...label.svg], boxes: [mark, ...label.boxes] };
}
