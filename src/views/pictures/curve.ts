import { tenth } from "./svg.ts";

/** A point of the drawing [px], y downwards. */
export type Point = { readonly x: number; readonly y: number };

/** The slope at each point that lets a cubic curve run through them all without ever overshooting. */
function slopes(points: readonly Point[]): readonly number[] {
  const rises = points.slice(1).map(({ x, y }, i) => {
    const before = points[i] ?? { x, y };
    return x === before.x ? 0 : (y - before.y) / (x - before.x);
  });
  return points.map((_, i) => {
    const [before, after] = [rises[i - 1], rises[i]];
    if (before === undefined || after === undefined) return before ?? after ?? 0;
    if (before * after <= 0) return 0;
    const least = Math.min(Math.abs(before), Math.abs(after), Math.abs(before + after) / 4);
    return 2 * Math.sign(before) * least;
  });
}

/** The cubic pieces that lead on from the first point, without the move to it; x rises or falls throughout. */
function pieces(points: readonly Point[]): string {
  const slope = slopes(points);
  return points
    .slice(1)
    .map(({ x, y }, i) => {
      const from = points[i] ?? { x, y };
      const third = (x - from.x) / 3;
      const out = `${tenth(from.x + third)} ${tenth(from.y + third * (slope[i] ?? 0))}`;
      const into = `${tenth(x - third)} ${tenth(y - third * (slope[i + 1] ?? 0))}`;
      return `C${out} ${into} ${tenth(x)} ${tenth(y)}`;
    })
    .join("");
}

const at = ({ x, y }: Point) => `${tenth(x)} ${tenth(y)}`;

/**
 * A smooth curve through the points, which come in order of x; between two of them it never leaves their heights.
 * Source: Steffen, 1990, A simple method for monotonic interpolation in one dimension, from memory: the mean of the
 * slopes on both sides, at most twice the lesser one, none where they turn.
 */
export function curveOf(points: readonly Point[]): string {
  const [first] = points;
  return first ? `M${at(first)}${pieces(points)}` : "";
}

/** A closed outline: along the upper points from left to right, and back along the lower ones, each given from left to right. */
export function outlineOf(upper: readonly Point[], lower: readonly Point[]): string {
  const back = [...lower].reverse();
  const [first] = upper;
  const [turn] = back;
  if (!first || !turn) return "";
  return `M${at(first)}${pieces(upper)}L${at(turn)}${pieces(back)}Z`;
}
