import { fahrenheit } from "../base/index.ts";
import { COLUMNS_F } from "./emergence.ts";
import type { Crop, Source } from "./facts.ts";
import { CITE } from "./figures.ts";

/** Normal seedlings out of a hundred seeds at one soil temperature [%]; null where untested, or the reprint is unsure. */
export type Percent = number | null;

/** The source of every row of the table. */
export const SEEDLINGS_SOURCE: Source = { kind: "published", cite: CITE.harrington };

/**
 * Normal seedlings out of a hundred seeds [%], one row a crop, one column a constant soil temperature in the order of
 * COLUMNS_F. Zeros that the reprint shows beside high figures (cabbage, cauliflower, parsley, radish) are null here.
 * Source: SEEDLINGS_SOURCE, the same experiments as the days table.
 */
export const SEEDLINGS_PERCENT: Readonly<Record<string, readonly Percent[]>> = {
  asparagus: [0, 0, 61, 80, 88, 95, 79, 37, 0],
  bean_lima: [0, 0, 1, 52, 82, 90, 88, 2, 0],
  bean_snap: [0, 0, 1, 97, 90, 97, 47, 39, 0],
  cabbage: [0, 27, 78, 93, null, 99, null, null, null],
  carrot: [0, 48, 93, 95, 96, 96, 95, 74, 0],
  cauliflower: [0, 0, 58, 60, null, 63, 45, 0, 0],
  celery: [0, 72, 70, 40, 97, 65, 0, 0, 0],
  cucumber: [0, 0, 0, 95, 99, 99, 99, 99, 49],
  eggplant: [0, 0, 0, 0, 21, 53, 60, 0, 0],
  muskmelon: [0, 0, 0, 0, 38, 94, 90, 0, 0],
  okra: [0, 0, 0, 74, 89, 92, 88, 85, 35],
  onion: [90, 98, 98, 98, 99, 97, 91, 73, 2],
  parsley: [0, 0, 63, null, 69, 64, 50, 0, 0],
  pepper: [0, 0, 1, 70, 96, 98, 95, 70, 0],
  radish: [0, 42, 76, 97, 95, 97, 95, null, 0],
  spinach: [83, 96, 91, 82, 52, 28, 32, 0, 0],
  tomato: [0, 0, 82, 98, 98, 97, 83, 46, 0],
  turnip: [1, 14, 79, 98, 99, 100, 99, 99, 88],
};

/** The table's name of a crop where it differs from ours. */
const ROW_OF: Readonly<Record<string, string>> = {
  bean: "bean_snap",
  "lima-bean": "bean_lima",
  melon: "muskmelon",
  "pole-bean": "bean_snap",
};

/**
 * The row of SEEDLINGS_PERCENT for a crop, null where the table has none of its own. A row that only lends another crop
 * its days to emergence is not used here: how fast and how many are two things.
 */
export function seedlingsRow(crop: Crop): string | null {
  const row = ROW_OF[crop.key] ?? crop.key;
  return Object.hasOwn(SEEDLINGS_PERCENT, row) ? row : null;
}

/** A temperature this near to a column [°F] counts as the column, because conversion to °C and back is not exact. */
const NEAR_F = 1e-9;

type Tested = { readonly atF: number; readonly percent: number };

/**
 * The share of seeds, 0 to 1, that come up in soil of that temperature [°C]: the table's own at its temperatures, in
 * proportion between the nearest two that were tested, null below the lowest tested and above the highest. Throws for
 * a row the table does not have.
 * Source: SEEDLINGS_SOURCE.
 */
export function emergenceShare(row: string, soilC: number): number | null {
  const percents = SEEDLINGS_PERCENT[row];
  if (!percents) throw new RangeError(`no row ${row} in the table of seedlings`);
  const atF = fahrenheit(soilC);
  const tested = percents.flatMap((percent, i): readonly Tested[] =>
    percent === null ? [] : [{ atF: COLUMNS_F[i] ?? 0, percent }],
  );
  const below = tested.findLast((each) => each.atF <= atF + NEAR_F);
  const above = tested.find((each) => each.atF >= atF - NEAR_F);
  if (!below || !above) return null;
  if (below.atF >= above.atF) return below.percent / 100;
  const way = (atF - below.atF) / (above.atF - below.atF);
  return (below.percent + way * (above.percent - below.percent)) / 100;
}
