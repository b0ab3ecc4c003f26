import { readFileSync } from "node:fs";
import { parse } from "yaml";

const textOf = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");

/** A copied YAML file of published figures, in the shape that its test reads it. */
export function yamlOf<Shape>(name: string): Shape {
  return parse(textOf(name)) as Shape;
}

/** The rows of a copied CSV file of published figures, each cell by its column's name. */
export function csvOf(name: string): readonly Readonly<Record<string, string>>[] {
  const lines = textOf(name)
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));
  const [head = "", ...rows] = lines;
  const columns = head.split(",");
  return rows.map((row) => {
    const cells = row.match(/"[^"]*"|[^,]+|(?<=^|,)(?=,|$)/g) ?? [];
    return Object.fromEntries(columns.map((column, i) => [column, unquoted(cells[i] ?? "")]));
  });
}

const unquoted = (cell: string): string => cell.replace(/^"(.*)"$/, "$1");

/** Least and most of `7-10`, `1/4`, `3/4-1`, `65T`, `24 trellised`, `12` or `[4, 6]`. */
export function spanOf(figure: string | number | readonly number[]): readonly [number, number] {
  const parts = typeof figure === "object" ? figure.map(String) : String(figure).split("-");
  const numbers = parts.map((part) => {
    const [above = "", below = "1"] = (/[\d./]+/.exec(part)?.[0] ?? "").split("/");
    return Number(above) / Number(below);
  });
  return [Math.min(...numbers), Math.max(...numbers)];
}

/** A comparison of one of our figures with a published one: its name, and whether it holds. */
export type Held = { readonly name: string; readonly holds: boolean };

/** A span's nearest value is no farther than so much from another's. */
export function within(
  name: string,
  [ours, theirs]: readonly [readonly [number, number], readonly [number, number]],
  tolerance: number,
): Held {
  const gap = Math.max(theirs[0] - ours[1], ours[0] - theirs[1], 0);
  return { name, holds: gap <= tolerance + 1e-9 };
}

/** The middles of two spans are within a factor of two of each other. */
export function withinTwofold(
  name: string,
  [ours, theirs]: readonly [readonly [number, number], readonly [number, number]],
): Held {
  const ratio = (ours[0] + ours[1]) / (theirs[0] + theirs[1]);
  return { name, holds: ratio <= 2 + 1e-9 && ratio >= 0.5 - 1e-9 };
}

/** The names of the comparisons that do not hold. */
export function missed(comparisons: readonly Held[]): readonly string[] {
  return comparisons.filter(({ holds }) => !holds).map(({ name }) => name);
}
