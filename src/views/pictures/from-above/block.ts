import type { Standing } from "./standing.ts";

/** The ground of a bed [cm]; rows run along its length. */
export type BedSize = { readonly lengthCm: number; readonly widthCm: number };

/**
 * How a planting stands once all its sowings are there: in so many rows, `rowsCm` [cm] long each and the last perhaps
 * shorter, so that they have `totalCm` together; plants `apartCm` from each other, null where that or their number is not
 * known, and then a row is drawn as a line.
 */
export type RowBlock = BedSize & {
  readonly rows: number;
  readonly totalCm: number;
  readonly apartCm: number | null;
};

/** Distance of rows where the facts have none [cm]. Source: house rule; a picture needs some. */
const DEFAULT_ROW_CM = 25;

/** The block of a planting in a bed of that size, where `among` plantings share it in the season. Never longer than the bed. */
export function blockOf(
  { amount, spacing, sowings }: Pick<Standing, "amount" | "spacing" | "sowings">,
  bed: BedSize,
  among: number,
): RowBlock {
  const apartCm = spacing && Math.min(spacing.apartCm, bed.lengthCm);
  const rowCm = spacing?.rowCm ?? DEFAULT_ROW_CM;
  if (amount === null || (amount.kind === "plants" && apartCm === null))
    return { ...bed, widthCm: bed.widthCm / among, rows: 1, totalCm: bed.lengthCm, apartCm: null };
  switch (amount.kind) {
    case "rows":
      return {
        lengthCm: bed.lengthCm,
        widthCm: amount.count * rowCm,
        rows: amount.count,
        totalCm: amount.count * bed.lengthCm,
        apartCm,
      };
    case "length":
      return rowsOf(amount.length.si, { bed, rowCm, apartCm });
    case "plants":
      return plantsOf(amount.count * sowings.length, bed, apartCm ?? 1);
  }
}

type Rows = {
  readonly bed: BedSize;
  readonly rowCm: number;
  readonly apartCm: number | null;
};

/** So much of a row in as few rows as the bed's length allows. */
function rowsOf(totalCm: number, { bed, rowCm, apartCm }: Rows): RowBlock {
  const rows = Math.max(1, Math.ceil(totalCm / bed.lengthCm - 1e-9));
  const lengthCm = Math.min(totalCm, bed.lengthCm);
  return { lengthCm, widthCm: rows * rowCm, rows, totalCm, apartCm };
}

/** So many plants in as few rows as the bed's length allows, as even as may be. */
function plantsOf(count: number, bed: BedSize, apartCm: number): RowBlock {
  const most = Math.max(1, Math.floor(bed.lengthCm / apartCm + 1e-9));
  const rows = Math.max(1, Math.ceil(count / most));
  const inRow = Math.ceil(count / rows);
  const widthCm = rows * apartCm;
  return { lengthCm: inRow * apartCm, widthCm, rows, totalCm: count * apartCm, apartCm };
}
