import type { Bed } from "../../../garden/model/index.ts";
import type { Point } from "../curve.ts";
import { element, tenth } from "../svg.ts";
import { type BedContent, type DrawnBed, isMarked } from "./bed-content.ts";
import { markRound } from "./marks.ts";
import { type Standing, standsOn } from "./standing.ts";

/** A planting in some of the bags: the first of them and how many, both counted from 0, and its plants in all. */
export type InBags = {
  readonly standing: Standing;
  readonly first: number;
  readonly bags: number;
  readonly plants: number | null;
};

/** Which bags each planting has, one behind the other by their numbers of plants; more plantings than bags share them. */
export function inBags(all: readonly Standing[], count: number): readonly InBags[] {
  const plantsIn = ({ amount }: Standing) => (amount?.kind === "plants" ? amount.count : null);
  const total = all.reduce((sum, each) => sum + (plantsIn(each) ?? 1), 0);
  let before = 0;
  return all.map((standing) => {
    const plants = plantsIn(standing);
    const first = Math.min(count - 1, Math.round((before / total) * count));
    before += plants ?? 1;
    const bags = Math.max(1, Math.round((before / total) * count) - first);
    return { standing, first, bags, plants };
  });
}

/** Bags or pots from above, each a rim with its plants in it; their names stand below. */
export function drawBags(
  bags: NonNullable<Bed["bags"]>,
  { standing, note, day, outline, at, pxPerCm }: BedContent,
): DrawnBed {
  const shown = standing.filter((each) => standsOn(each, day) || isMarked(each, note));
  const radiusPx = (bags.across.si * pxPerCm) / 2;
  const inRow = Math.round(outline.widthPx / outline.pitchPx);
  const middle = (i: number) => ({
    x: at.x + ((i % inRow) + 0.5) * outline.pitchPx,
    y: at.y + (Math.floor(i / inRow) + 0.5) * outline.pitchPx,
  });
  const rims = Array.from({ length: bags.count }, (_, i) => rimAt(middle(i), radiusPx));
  const filled = inBags(shown, bags.count);
  const plants = filled.flatMap((each) =>
    standsOn(each.standing, day) ? plantsOf(each, { middle, radiusPx }) : [],
  );
  const framed = filled.flatMap(({ standing: { key }, first, bags: own }) => {
    const mark = note.marks.find(({ planting }) => planting === key);
    return mark
      ? Array.from({ length: own }, (_, i) => markRound(middle(first + i), radiusPx, mark.as))
      : [];
  });
  const unnamed = filled.map(({ standing: { name }, bags: own }) =>
    filled.length === 1 ? name : `${name} in ${own}`,
  );
  return { svg: [...rims, ...plants, ...framed.flat()], named: 0, unnamed };
}

/** The rim of a bag, and within it the edge of its soil. */
function rimAt({ x, y }: Point, radiusPx: number): string {
  const inner = Math.max(0.5, radiusPx * 0.86);
  return [
    element("circle", { class: "soil-line", "stroke-width": 1.4, cx: x, cy: y, r: radiusPx }),
    element("circle", { class: "earth", cx: x, cy: y, r: inner }),
    element("circle", { class: "soil-line", "stroke-width": 0.6, cx: x, cy: y, r: inner }),
  ].join("");
}

/** A planting's plants, as evenly among its bags as they go; where their number is not known, one in each. */
function plantsOf(
  { first, bags, plants }: InBags,
  place: { readonly middle: (i: number) => Point; readonly radiusPx: number },
): readonly string[] {
  const { middle, radiusPx } = place;
  const total = plants ?? bags;
  const dots = Array.from({ length: bags }, (_, i) => {
    const own = Math.floor(((i + 1) * total) / bags) - Math.floor((i * total) / bags);
    return spread(own).map(({ x, y }) => {
      const at = middle(first + i);
      return `M${tenth(at.x + x * radiusPx)} ${tenth(at.y + y * radiusPx)}h0`;
    });
  });
  const widthPx = Math.min(5, Math.max(1.4, radiusPx * 0.22));
  const d = dots.flat().join("");
  const look = { class: "plant-line", "stroke-width": widthPx, "stroke-linecap": "round" };
  return d === "" ? [] : [element("path", { ...look, d })];
}

/** More plants than these stand in a spiral, as seeds do in a flower, and fewer in a ring. */
const RING = 6;

/** Turn from one plant of the spiral to the next [radians]: the golden angle. */
const GOLDEN = Math.PI * (3 - Math.sqrt(5));

/** So many points spread in a circle of radius 1 round its middle. */
function spread(count: number): readonly Point[] {
  if (count === 1) return [{ x: 0, y: 0 }];
  return Array.from({ length: count }, (_, i) => {
    const out = count <= RING ? 0.48 : 0.78 * Math.sqrt((i + 0.5) / count);
    const turn = count <= RING ? (2 * Math.PI * i) / count - Math.PI / 2 : i * GOLDEN;
    return { x: out * Math.cos(turn), y: out * Math.sin(turn) };
  });
}
