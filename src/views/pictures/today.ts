import type { Day } from "../../base/days/day.ts";
import { sayDay } from "../../base/days/day.ts";
import { type Box, type Placing, setLabels, wishAt } from "./labels.ts";
import { type Scale, shows, xOf } from "./scale.ts";
import type { Sheet } from "./sheet.ts";
import { element, tenth } from "./write.ts";

/** From where to where today's line runs down [px]. */
export type Drop = { readonly topPx: number; readonly lowPx: number };

/** Today's dotted line at an x [px]. */
export function todayLine(x: number, { topPx, lowPx }: Drop): string {
  return element("path", {
    class: "ink-line",
    "stroke-width": 1.2,
    "stroke-dasharray": "2 3",
    d: `M${tenth(x)} ${tenth(topPx)}V${tenth(lowPx)}`,
  });
}

/** Today's line below its name, with the room that both take; `more` stands behind the day. Nothing where the scale does not have the day, or there is none. */
export function todayNamed(
  today: Day | null,
  scale: Scale,
  {
    drop,
    sheet,
    more = "",
  }: { readonly drop: Drop; readonly sheet: Sheet; readonly more?: string },
): Placing {
  if (today === null || !shows(scale, today)) return { written: [], boxes: [] };
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
    setLabels(
      [wishAt(x, { rows: [y], sizePx: sheet.smallPx }, { text, ink: "pencil", look: "aside" })],
      within,
    ),
  );
  const named = sets.find(({ boxes }) => boxes.length > 0) ?? { written: [], boxes: [] };
  const mark: Box = { x: x - 2, y: drop.topPx, widthPx: 4, heightPx: drop.lowPx - drop.topPx };
  return { written: [todayLine(x, drop), ...named.written], boxes: [mark, ...named.boxes] };
}
