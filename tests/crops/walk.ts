import type { Crop, Figure } from "../../src/crops/facts.ts";

/** A figure and the path of names that leads to it. */
export type Found = { readonly path: string; readonly figure: Figure<unknown> };

function isFigure(thing: object): thing is Figure<unknown> {
  return "value" in thing && "source" in thing;
}

/** Every figure of a crop, wherever it stands. */
export function figuresOf(thing: unknown, path: string): readonly Found[] {
  if (thing === null || typeof thing !== "object") return [];
  if (isFigure(thing)) return [{ path, figure: thing }];
  return Object.entries(thing).flatMap(([key, inner]) => figuresOf(inner, `${path}.${key}`));
}

/** The figures of some crops. */
export function allFigures(crops: readonly Crop[]): readonly Found[] {
  return crops.flatMap((crop) => figuresOf(crop, crop.key));
}

/** A value of inches in centimetres, for comparing. */
export const inch = (value: number) => value * 2.54;
