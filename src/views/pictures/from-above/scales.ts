import type { BedDetails } from "./details.ts";
import { type GroundScale, type ShelfRoom, sizeOf } from "./ground.ts";
import { type Shelves, type Shelving, shelvesAt } from "./shelves.ts";

/** Least and most length of a metre in the drawing [px]. Source: house rule: rows of a bed 1.2 m wide can be told apart. */
const METRE_PX = { least: 29, most: 105 } as const;

/** Strips that a very long bed may be laid in, and the most height of a very wide one [px]. Source: house rule. */
const [MOST_STRIPS, MOST_WIDE_PX] = [8, 560];

/** How much longer a sheet may be than the shortest for the sake of a larger scale. Source: house rule. */
const LONGER = 1.25;

/** The largest scale that makes the sheet little longer than any other does. */
export function scaleFor(beds: readonly BedDetails[], shelving: Shelving): GroundScale {
  const all = scalesFor(beds, shelving).map((scale) => shelvesAt(beds, scale, shelving));
  const shortest = Math.min(...all.map(({ endsPx }) => endsPx));
  const most = shelving.y + (shortest - shelving.y) * LONGER;
  const fits = all.filter(({ endsPx }) => endsPx <= most);
  return fits.reduce((best, next) => (next.pxPerCm > best.pxPerCm ? next : best));
}

/** The beds set out at the largest scale found at which they end above `lowestPx`; null where none is. */
export function shelvesAbove(
  beds: readonly BedDetails[],
  lowestPx: number,
  { rough, exact }: { readonly rough: Shelving; readonly exact: Shelving },
): Shelves | null {
  const scales = scalesFor(beds, rough);
  const fits = (scale: GroundScale) => shelvesAt(beds, scale, rough).endsPx <= lowestPx;
  const smallest = scales.at(-1);
  if (!smallest || !fits(smallest)) return null;
  const first = scales.findIndex(fits);
  // Names that find no room make beds higher than was thought; each step down costs a drawing, so there are few.
  for (const step of [0, 1, 2, 4, 7, 11]) {
    const scale = scales[first + step];
    const shelves = scale && shelvesAt(beds, scale, exact);
    if (shelves && shelves.endsPx <= lowestPx) return shelves;
  }
  return null;
}

/** Scales that are tried, the largest first, each a little smaller than the one before; never empty. */
function scalesFor(beds: readonly BedDetails[], room: ShelfRoom): readonly GroundScale[] {
  const { least, most } = boundsFor(beds, room);
  const steps = Math.ceil(Math.log(most / least) / Math.log(STEP));
  return Array.from({ length: steps + 1 }, (_, i) => ({
    pxPerCm: Math.max(least, most / STEP ** i),
  }));
}

/** From one scale to the next. Source: house rule. */
const STEP = 1.06;

function boundsFor(
  beds: readonly BedDetails[],
  { widthPx }: ShelfRoom,
): { readonly least: number; readonly most: number } {
  const sizes = beds
    .map(({ bed }) => bed)
    .filter(({ bags }) => !bags)
    .map(sizeOf);
  const longest = Math.max(0, ...sizes.map(({ lengthCm }) => lengthCm));
  const widest = Math.max(0, ...sizes.map(({ widthCm }) => widthCm));
  const whole = sizes.filter(({ lengthCm }) => (lengthCm * METRE_PX.least) / 100 <= widthPx);
  const most = Math.min(
    METRE_PX.most / 100,
    ...whole.map(({ lengthCm }) => widthPx / lengthCm),
    ...(longest > 0 ? [(MOST_STRIPS * widthPx) / longest] : []),
    ...(widest > 0 ? [MOST_WIDE_PX / widest] : []),
  );
  return { least: Math.min(most, METRE_PX.least / 100), most };
}
