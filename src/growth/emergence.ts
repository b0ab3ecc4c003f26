import { COLUMNS_F, EMERGENCE_DAYS } from "../crops/emergence.ts";
import { type Day, plus } from "../days/day.ts";
import { fahrenheit } from "../quantities/quantity.ts";

/** Seed that has not come up after so many days never will. Source: house rule; longer than any crop at a soil it may be sown in. */
export const GIVE_UP_DAYS = 90;

/**
 * The share of the way from sowing to emergence that a day at that soil temperature [°C] brings: one over the
 * table's days, between two columns in proportion; 0 where nothing comes up or nothing was tested.
 * Throws for a row the table does not have.
 * Source: Harrington and Minges, University of California, 1954, as in crops/emergence.ts.
 */
export function dailyShare(row: string, soilC: number): number {
  const days = EMERGENCE_DAYS[row];
  if (!days) throw new RangeError(`no row ${row} in the table of days to emergence`);
  const at = fahrenheit(soilC);
  const rate = (i: number) => {
    const cell = days[i];
    return typeof cell === "number" ? 1 / cell : 0;
  };
  const last = COLUMNS_F.length - 1;
  if (at <= COLUMNS_F[0]) return at === COLUMNS_F[0] ? rate(0) : 0;
  if (at >= (COLUMNS_F[last] ?? 0)) return at === COLUMNS_F[last] ? rate(last) : 0;
  const low = COLUMNS_F.findLastIndex((column) => column <= at);
  const from = COLUMNS_F[low] ?? 0;
  const to = COLUMNS_F[low + 1] ?? from;
  return rate(low) + ((rate(low + 1) - rate(low)) * (at - from)) / (to - from);
}

/**
 * The day that seed of a row is up when sown on a day into soil of those temperatures [°C], or null where it
 * would take longer than GIVE_UP_DAYS. At a constant temperature it gives the table's days, rounded up.
 */
export function upOn(row: string, sown: Day, soilC: (day: Day) => number): Day | null {
  let done = 0;
  for (let days = 0; days < GIVE_UP_DAYS; days++) {
    done += dailyShare(row, soilC(plus(sown, days)));
    if (done >= 1 - 1e-9) return plus(sown, days + 1);
  }
  return null;
}
