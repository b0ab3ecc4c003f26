import { type Day, latest } from "../../base/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import { type Occupancy, shareOn, spansOn } from "./occupancy.ts";

/**
 * A planting in the bed: from when, when it begins to go, and by when it is gone; sowings that follow without a gap
 * count as one.
 */
export type BedOccupant = {
  readonly planting: string;
  readonly name: string;
  readonly from: Day;
  readonly ends: Day;
  readonly gone: Day;
};

/**
 * What is in a bed and what is free: `standing` on the day, `coming` what else will be there within a year, by day.
 * `freeShare` of the bed is free, 0 to 1, `freeCm` of its width (null for bags), and all of it from `freeFrom` on, the
 * day itself where the bed is empty. Both are null where it is not known how much something takes.
 */
export type FreeSpace = {
  readonly standing: readonly BedOccupant[];
  readonly coming: readonly BedOccupant[];
  readonly freeShare: number | null;
  readonly freeCm: number | null;
  readonly freeFrom: Day;
};

/** How far ahead a coming planting is listed [days]. Source: house rule, a year. */
const AHEAD_DAYS = 365;

/** The same for a bed and everything that is ever in it. */
export function freeOn(bed: Bed, all: readonly Occupancy[], day: Day): FreeSpace {
  const standing = all.flatMap((each) => occupantOn(each, day));
  const there = standing.map(({ planting }) => planting);
  const coming = all
    .filter(({ planting }) => !there.includes(planting.key))
    .flatMap((each) => comingAfter(each, day))
    .sort((a, b) => a.from - b.from);
  const freeShare = standing.length === 0 ? 1 : shareLeft(bed, all, day);
  const width = bed.widthCm?.si ?? null;
  return {
    standing,
    coming,
    freeShare,
    freeCm: freeShare === null || width === null ? null : freeShare * width,
    freeFrom: latest(day, ...standing.map(({ gone }) => gone)),
  };
}

/** A planting in the bed, to the end of its sowings that follow without a gap. */
function occupantOn(standing: Occupancy, day: Day): readonly BedOccupant[] {
  const { spans } = standing;
  const [first] = spansOn(standing, day, "gone");
  if (!first) return [];
  let { ends, gone } = first;
  for (const span of spans)
    if (span.from > first.from && span.from <= gone)
      [ends, gone] = [latest(ends, span.ends), latest(gone, span.gone)];
  return [occupantOf(standing, { from: first.from, ends, gone })];
}

/** The first of its sowings within a year. */
function comingAfter(standing: Occupancy, day: Day): readonly BedOccupant[] {
  const next = standing.spans.find(({ from }) => from > day && from - day < AHEAD_DAYS);
  return next ? [occupantOf(standing, next)] : [];
}

type OccupantDays = Pick<BedOccupant, "from" | "ends" | "gone">;

function occupantOf({ planting }: Occupancy, { from, ends, gone }: OccupantDays): BedOccupant {
  return { planting: planting.key, name: planting.name ?? planting.written, from, ends, gone };
}

function shareLeft(bed: Bed, all: readonly Occupancy[], day: Day): number | null {
  if (!bed.bags && (!bed.lengthCm || !bed.widthCm)) return null;
  let taken = 0;
  for (const each of all) {
    const share = shareOn(each, day, "gone");
    if (share === null) return null;
    taken += share;
  }
  return Math.max(0, 1 - taken);
}
