import { type BedSize, blockOf, type RowBlock } from "./block.ts";
import { meet, type Standing } from "./standing.ts";

/** A planting's place in its bed [cm]: x along the bed from its left end, y across it from its upper side. */
export type Place = {
  readonly standing: Standing;
  readonly block: RowBlock;
  readonly x: number;
  readonly y: number;
};

/** Rounding that two places may share [cm]. */
const SAME_CM = 1e-6;

/** Widths that a block would rather have than its own [cm], rising, the last one the best. */
export type WiderBlock = (standing: Standing, block: RowBlock) => readonly number[];

/** More plantings than these are not widened one by one. Source: house rule; it takes too long. */
const MOST_WIDENED = 12;

/**
 * A place for each planting of a bed for the whole season, so that what stands never moves in the drawing: in the plan's
 * order, where one follows another in its place, else the first that is free as long as it stands. Blocks are widened one
 * by one as long as the bed has room for it and `freeCm` of its width stay free; in a bed that is too full all are made
 * narrower.
 */
export function placesIn(
  all: readonly Standing[],
  bed: BedSize,
  { wider = () => [], freeCm = 0 }: { readonly wider?: WiderBlock; readonly freeCm?: number } = {},
): readonly Place[] {
  const blocks = all.map((standing) => ({ standing, block: blockOf(standing, bed, all.length) }));
  let places = placed(blocks, bed);
  if (all.length > MOST_WIDENED || endOf(places) > bed.widthCm + SAME_CM)
    return squeezed(places, bed);
  const wishes = blocks.map(({ standing, block }) => wider(standing, block));
  const steps = Math.max(0, ...wishes.map(({ length }) => length));
  const now = [...blocks];
  for (let step = 0; step < steps; step++)
    for (const [i, { standing, block }] of blocks.entries()) {
      const widthCm = wishes[i]?.[step];
      if (widthCm === undefined || widthCm <= block.widthCm) continue;
      const tried = now.with(i, { standing, block: { ...block, widthCm } });
      const found = placed(tried, bed);
      if (endOf(found) > bed.widthCm - freeCm + SAME_CM) continue;
      now[i] = tried[i] ?? { standing, block };
      places = found;
    }
  return places;
}

type Unplaced = Pick<Place, "standing" | "block">;

const endOf = (places: readonly Place[]) =>
  Math.max(0, ...places.map(({ y, block }) => y + block.widthCm));

function placed(all: readonly Unplaced[], bed: BedSize): readonly Place[] {
  const places: Place[] = [];
  for (const each of all) {
    const others = places.filter(({ standing }) => meet(standing, each.standing));
    const spots = [...predecessorSpots(each, places), ...spotsAmong(others)];
    const spot = spots.find((at) => isFree({ ...each, ...at }, others, bed));
    places.push({ ...each, ...(spot ?? { x: 0, y: endOf(others) }) });
  }
  return places;
}

type Corner = Pick<Place, "x" | "y">;

function predecessorSpots({ standing }: Unplaced, places: readonly Place[]): readonly Corner[] {
  const { after } = standing;
  if (after === null) return [];
  const before = places.filter(
    ({ standing: { key } }) => key === after || key.endsWith(`/${after}`),
  );
  return before.map(({ x, y }) => ({ x, y }));
}

/** Upper left corners beside and below the others, the uppermost first, then the leftmost. */
function spotsAmong(others: readonly Place[]): readonly Corner[] {
  const ys = [0, ...others.map(({ y, block }) => y + block.widthCm)].sort((a, b) => a - b);
  const xs = [0, ...others.map(({ x, block }) => x + block.lengthCm)].sort((a, b) => a - b);
  return ys.flatMap((y) => xs.map((x) => ({ x, y })));
}

function isFree(place: Place, others: readonly Place[], bed: BedSize): boolean {
  const { x, block } = place;
  return (
    x + block.lengthCm <= bed.lengthCm + SAME_CM && !others.some((other) => overlap(place, other))
  );
}

/** Whether two places share ground. */
export function overlap(a: Place, b: Place): boolean {
  return (
    a.x + a.block.lengthCm > b.x + SAME_CM &&
    b.x + b.block.lengthCm > a.x + SAME_CM &&
    a.y + a.block.widthCm > b.y + SAME_CM &&
    b.y + b.block.widthCm > a.y + SAME_CM
  );
}

function squeezed(places: readonly Place[], bed: BedSize): readonly Place[] {
  const end = endOf(places);
  if (end <= bed.widthCm + SAME_CM) return places;
  const share = bed.widthCm / end;
  return places.map((place) => ({
    ...place,
    y: place.y * share,
    block: { ...place.block, widthCm: place.block.widthCm * share },
  }));
}
