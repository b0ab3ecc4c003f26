import { type Day, latest } from "../../base/days/day.ts";
import type { Bed } from "../../garden/model/plan.ts";
import { type Standing, shareOn, spansOn } from "./standing.ts";

/** A planting in the bed: from when, from when on it goes, and by when it is gone; sowings that follow one another are one. */
export type Stand = {
  readonly planting: string;
  readonly name: string;
  readonly from: Day;
  readonly ends: Day;
  readonly gone: Day;
};

/**
 * Who is there and what is left: `standing` on the day, `coming` what else is to stand there within a year, by day. `freeShare` of the bed is free, 0 to
 * 1, `freeCm` of its width (null for bags), and all of it from `freeFrom` on, the day itself where nothing stands. Both are
 * null where it is not known what something takes.
 */
export type Free = {
  readonly standing: readonly Stand[];
  readonly coming: readonly Stand[];
  readonly freeShare: number | null;
  readonly freeCm: number | null;
  readonly freeFrom: Day;
};

/** Days ahead within which a planting to come is told. Source: house rule, a year. */
const AHEAD_DAYS = 365;

/** The same for a bed and all that ever stands in it. */
export function freeOn(bed: Bed, all: readonly Standing[], day: Day): Free {
  const standing = all.flatMap((each) => standOn(each, day));
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

/** A planting that stands there, to the end of its sowings that follow without a gap. */
function standOn(standing: Standing, day: Day): readonly Stand[] {
  const { spans } = standing;
  const [first] = spansOn(standing, day, "gone");
  if (!first) return [];
  let { ends, gone } = first;
  for (const span of spans)
    if (span.from > first.from && span.from <= gone)
      [ends, gone] = [latest(ends, span.ends), latest(gone, span.gone)];
  return [stand(standing, { from: first.from, ends, gone })];
}

/** The first of its sowings within a year. */
function comingAfter(standing: Standing, day: Day): readonly Stand[] {
  const next = standing.spans.find(({ from }) => from > day && from - day < AHEAD_DAYS);
  return next ? [stand(standing, next)] : [];
}

type Days = Pick<Stand, "from" | "ends" | "gone">;

function stand({ planting }: Standing, { from, ends, gone }: Days): Stand {
  return { planting: planting.key, name: planting.name ?? planting.written, from, ends, gone };
}

function shareLeft(bed: Bed, all: readonly Standing[], day: Day): number | null {
  if (!bed.bags && (!bed.lengthCm || !bed.widthCm)) return null;
  let taken = 0;
  for (const each of all) {
    const share = shareOn(each, day, "gone");
    if (share === null) return null;
    taken += share;
  }
  return Math.max(0, 1 - taken);
}
