import type { Day } from "../../../base/index.ts";
import type { Place } from "./places.ts";

/** A piece of a row with plants in it [cm]: y across the bed, from x to x along it. */
export type RowPiece = { readonly y: number; readonly x1: number; readonly x2: number };

/**
 * What stands of a planting on a day, row by row. Sowings share the rows: each has its own part of their length, and one
 * that is not there leaves its part empty. `headCm` of its width are left free above the rows.
 */
export function rowPiecesOn(
  { standing, block, x, y }: Place,
  day: Day,
  headCm: number,
): readonly RowPiece[] {
  const { rows, lengthCm, widthCm, totalCm } = block;
  const { sowings, amount } = standing;
  // Rows are sown from end to end; what is counted otherwise fills one row after the other.
  const runCm = amount?.kind === "rows" ? lengthCm : totalCm;
  const partCm = runCm / sowings.length;
  return Array.from({ length: rows }, (_, row) => {
    const begins = amount?.kind === "rows" ? 0 : row * lengthCm;
    const middle = y + headCm + (row + 0.5) * ((widthCm - headCm) / rows);
    return sowings.flatMap(({ from, gone }, i) => {
      const x1 = Math.max(begins, i * partCm);
      const x2 = Math.min(begins + lengthCm, (i + 1) * partCm);
      const stands = from <= day && day < gone && x2 - x1 > 1e-6;
      return stands ? [{ y: middle, x1: x + x1 - begins, x2: x + x2 - begins }] : [];
    });
  }).flat();
}
