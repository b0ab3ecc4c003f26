import { BOUNDS, type BoundName, REFERENCE_MS } from "./bounds.ts";
import type { Measured } from "./measure.ts";

/** A line of the table: a price, a ratio of prices, or why there is neither. */
export type Row = {
  readonly name: string;
  readonly bound: BoundName;
  readonly note?: string;
} & (Measured | { readonly kind: "ratio"; readonly ratio: number });

/** Whether a row keeps its bound; one that could not be measured does not. */
export function isMet(row: Row): boolean {
  const { most } = BOUNDS[row.bound];
  if (row.kind === "price") return row.price.share * REFERENCE_MS <= most;
  return row.kind === "ratio" && row.ratio <= most;
}

/** What the reference took beside these rows [ms], the median; not a number where none has a price. */
export function referenceMsIn(rows: readonly Row[]): number {
  const all = rows.flatMap((row) => (row.kind === "price" ? [row.price.ms / row.price.share] : []));
  return all.toSorted((a, b) => a - b)[all.length >> 1] ?? Number.NaN;
}

/** All rows under one head, each with its verdict. */
export function tableOf(rows: readonly Row[]): string {
  const head = ["", "CPU ms", "of reference", "spread", "at most", ""];
  return [head, ...rows.map(cellsOf)].map(line).join("\n");
}

const WIDTHS = [50, 8, 14, 8, 18, 9] as const;

function line(cells: readonly string[]): string {
  const padded = WIDTHS.map((width, at) => {
    const cell = cells[at] ?? "";
    return at === 0 ? cell.padEnd(width) : cell.padStart(width);
  });
  return [...padded, ...cells.slice(WIDTHS.length)].join("").trimEnd();
}

function cellsOf(row: Row): readonly string[] {
  const verdict = isMet(row) ? "met" : "missed";
  const note = row.kind === "failed" ? row.why : (row.note ?? "");
  return [row.name, ...figuresOf(row), boundText(row.bound), verdict, `  ${note}`];
}

function figuresOf(row: Row): readonly string[] {
  if (row.kind === "failed") return ["-", "-", "-"];
  if (row.kind === "ratio") return ["-", row.ratio.toFixed(2), "-"];
  const { ms, share, spread } = row.price;
  return [digits(ms), digits(share), `${Math.round(spread * 100)} %`];
}

function boundText(bound: BoundName): string {
  const { unit, most } = BOUNDS[bound];
  return unit === "ratio" ? most.toFixed(2) : `${most} ms = ${digits(most / REFERENCE_MS)}`;
}

function digits(value: number): string {
  return value.toFixed(value < 1 ? 3 : value < 100 ? 2 : 0);
}
