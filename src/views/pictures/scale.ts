import { type Day, type DaySpan, MONTHS, monthStart, partsOf, plus } from "../../base/index.ts";
import { widthOf } from "./measure.ts";
import { element, tenth, textLine } from "./svg.ts";

/** Whole months from the first day to the last, both inclusive, set out evenly between two x [px]. */
export type Scale = DaySpan & {
  readonly leftPx: number;
  readonly rightPx: number;
};

/** The x [px] at which a day begins, parts of days in proportion; days outside the scale lie outside its x. */
export function xOf({ from, to, leftPx, rightPx }: Scale, day: number): number {
  return leftPx + ((day - from) / (to + 1 - from)) * (rightPx - leftPx);
}

/** The same, but never outside the scale. */
export function xInside(scale: Scale, day: number): number {
  return Math.min(scale.rightPx, Math.max(scale.leftPx, xOf(scale, day)));
}

/** Whether the scale has that day. */
export function shows(scale: Scale, day: Day): boolean {
  return day >= scale.from && day <= scale.to;
}

/** A span of days in whole months: from the first of its first month to the last day of its last. */
export function wholeMonths(from: Day, to: Day): DaySpan {
  return { from: monthStart(from), to: plus(monthStart(to, 1), -1) };
}

/** The first days of the scale's months, in order. */
export function monthsOf({ from, to }: Scale): readonly Day[] {
  const starts: Day[] = [];
  for (let day = monthStart(from); day <= to; day = monthStart(day, 1)) starts.push(day);
  return starts;
}

/** Every so many days from the scale's first day on, and its last day. */
export function sampleDays({ from, to }: Scale, every: number): readonly Day[] {
  const days: Day[] = [];
  for (let day = from; day < to; day = plus(day, every)) days.push(day);
  return [...days, to];
}

/** Names of the months in the middle of each, letters alone where names have no room; a fine stroke where one begins. */
export function monthNames(scale: Scale, y: number, sizePx: number): string {
  const starts = monthsOf(scale);
  const roomPx = (scale.rightPx - scale.leftPx) / starts.length;
  const short = widthOf("May ", sizePx) > roomPx;
  const names = starts.map((start) => {
    const x = (xOf(scale, start) + xOf(scale, monthStart(start, 1))) / 2;
    const name = (MONTHS[partsOf(start).month - 1] ?? "").slice(0, short ? 1 : 3);
    return textLine({ x, y, sizePx, from: "middle" }, { text: name, ink: "pencil", look: "plain" });
  });
  const strokes = starts.slice(1).map((start) => `M${tenth(xOf(scale, start))} ${tenth(y - 4)}v6`);
  return [
    ...names,
    ...(strokes.length === 0
      ? []
      : [element("path", { class: "soil-line", "stroke-width": 0.8, d: strokes.join("") })]),
  ].join("");
}
