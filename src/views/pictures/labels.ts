import { widthOf } from "./measure.ts";
import { type TextRun, type TextSpot, textLine } from "./svg.ts";

/** A rectangle [px]; x, y is its upper left corner. */
export type Box = {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** Share of the type's size that its letters reach above and below the line they stand on. */
const [ABOVE, BELOW] = [0.8, 0.25];

/** The room a line of text takes; runs stand a space apart. */
export function boxOf({ x, y, sizePx, from }: TextSpot, runs: readonly TextRun[]): Box {
  const widthPx = widthOf(runs.map((run) => run.text).join(" "), sizePx);
  const back = from === "start" ? 0 : from === "middle" ? widthPx / 2 : widthPx;
  return { x: x - back, y: y - ABOVE * sizePx, widthPx, heightPx: (ABOVE + BELOW) * sizePx };
}

/** Whether two boxes share more than an edge. */
export function clash(a: Box, b: Box): boolean {
  return (
    a.x < b.x + b.widthPx &&
    b.x < a.x + a.widthPx &&
    a.y < b.y + b.heightPx &&
    b.y < a.y + a.heightPx
  );
}

/** Whether the inner box lies wholly in the outer one. */
export function inside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.widthPx <= outer.x + outer.widthPx &&
    inner.y + inner.heightPx <= outer.y + outer.heightPx
  );
}

/** A label of one or more lines, with the places it may stand at, the best first; a place has a spot for each line. */
export type LabelRequest = {
  readonly lines: readonly (readonly TextRun[])[];
  readonly places: readonly (readonly TextSpot[])[];
};

/** Labels that found a place, written, with the room they took. */
export type LabelLayout = { readonly svg: readonly string[]; readonly boxes: readonly Box[] };

/**
 * Each label at the first of its places where it touches no other and leaves the room it has; one that has none is left
 * out. The first come first; `taken` is what stands there already.
 */
export function placeLabels(
  requests: readonly LabelRequest[],
  within: Box,
  taken: readonly Box[] = [],
): LabelLayout {
  const boxes: Box[] = [...taken];
  const svg: string[] = [];
  for (const { lines, places } of requests) {
    const boxesAt = (place: readonly TextSpot[]) =>
      place.map((spot, i) => boxOf(spot, lines[i] ?? []));
    const place = places.find((each) => allFree(boxesAt(each), within, boxes));
    if (!place) continue;
    boxes.push(...boxesAt(place));
    svg.push(...place.map((spot, i) => textLine(spot, ...(lines[i] ?? []))));
  }
  return { svg, boxes: boxes.slice(taken.length) };
}

/** Whether all of the boxes lie inside the room and clear of what is taken. */
export function allFree(boxes: readonly Box[], within: Box, taken: readonly Box[]): boolean {
  return boxes.every((box) => inside(box, within) && !taken.some((other) => clash(box, other)));
}

/** A label of one line at an x, row below row: centred on it, ending at it, starting at it. */
export function labelRequestAt(
  x: number,
  { rows, sizePx }: { readonly rows: readonly number[]; readonly sizePx: number },
  ...runs: readonly TextRun[]
): LabelRequest {
  const places = rows.flatMap((y): readonly (readonly TextSpot[])[] => [
    [{ x, y, sizePx, from: "middle" }],
    [{ x: x + 2, y, sizePx, from: "end" }],
    [{ x: x - 2, y, sizePx, from: "start" }],
  ]);
  return { lines: [runs], places };
}
