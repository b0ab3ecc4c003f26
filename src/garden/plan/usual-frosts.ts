import { type Day, dayOf, dayOrThrow, midway, partsOf } from "../../base/index.ts";
import { plusYears } from "../model/season.ts";
import type { WrittenDate } from "./dates.ts";
import type { BothFrostSides, DatedFrostSide, OneOrThree } from "./frost-sides.ts";
import { type FrostSide, nightInSeason, type SeasonPlace } from "./nights.ts";

/**
 * How far the middle of the frosty time may be from midwinter (15 January, in the south 15 July) [days].
 * Source: house rule: at the stations of NOAA NCEI's normals it is within a month of it; twice that is no winter.
 */
const MOST_FROM_MIDWINTER = 60;

/** Nearer to the equator than this [degrees], frost depends on height and not on winter. Source: house rule. */
const NO_WINTER_WITHIN = 10;

/** The longest summer between frosts [days]. Source: house rule: a year and two weeks; records are uneven. */
const LONGEST_SUMMER_DAYS = 380;

/** The usual last and first frost, which lie round the season's summer. */
export type UsualFrosts = { readonly usualLast: Day; readonly usualFirst: Day };

/**
 * The usual dates round the plan's summer: that of the latitude's hemisphere, without one that which the dates fit; near
 * the equator, where there is none, in the order of the calendar. Null where they are no winter's.
 */
export function usualFrosts(
  sides: BothFrostSides,
  latitude: number | null,
  year: number,
): UsualFrosts | null {
  if (latitude !== null && Math.abs(latitude) < NO_WINTER_WITHIN) {
    const found = inCalendarYear(sides, year);
    return isSummer(found) ? found : null;
  }
  const halves = latitude === null ? [false, true] : [latitude < 0];
  const found = halves.map((south) => ({ south, ...inHemisphere(sides, { year, south }) }));
  return found.find((each) => isSummer(each) && isWinter(each)) ?? null;
}

function inHemisphere({ last, first }: BothFrostSides, place: SeasonPlace): UsualFrosts {
  const usual = (side: FrostSide, dated: DatedFrostSide) => {
    if (dated.kind === "own") return dated.dates.usual;
    const written = usualWrittenDate(dated.dates);
    return written.year === null
      ? nightInSeason(written, side, place)
      : inYear(written, place.year);
  };
  return { usualLast: usual("last", last), usualFirst: usual("first", first) };
}

/** The last frost in the plan's year, the first one next after it. */
export function inCalendarYear({ last, first }: BothFrostSides, year: number): UsualFrosts {
  const usualLast =
    last.kind === "own" ? last.dates.usual : inYear(usualWrittenDate(last.dates), year);
  const usualFirst =
    first.kind === "own" ? first.dates.usual : nextAfter(usualLast, usualWrittenDate(first.dates));
  return { usualLast, usualFirst };
}

function isSummer({ usualLast, usualFirst }: UsualFrosts): boolean {
  return usualFirst > usualLast && usualFirst - usualLast <= LONGEST_SUMMER_DAYS;
}

/** Whether the frosty time between them, a year before, lies round midwinter. */
function isWinter({ usualLast, usualFirst, south }: UsualFrosts & { readonly south: boolean }) {
  const middle = midway(plusYears(usualFirst, -1), usualLast);
  const { year } = partsOf(middle);
  const midwinters = [year - 1, year, year + 1].map((y) => dayOrThrow(y, south ? 7 : 1, 15));
  return midwinters.some((each) => Math.abs(middle - each) <= MOST_FROM_MIDWINTER);
}

/** The middle one of three, or the only one. */
const usualWrittenDate = (dates: OneOrThree): WrittenDate => dates[1] ?? dates[0];

/** The day in the plan's year, whatever the season; 28 February for a 29th that the year lacks. */
export function inYear(written: WrittenDate, year: number): Day {
  const { month, date } = written;
  return dayOf(written.year ?? year, month, date) ?? dayOrThrow(written.year ?? year, month, 28);
}

function nextAfter(day: Day, written: WrittenDate): Day {
  if (written.year !== null) return inYear(written, written.year);
  const same = inYear(written, partsOf(day).year);
  return same > day ? same : plusYears(same, 1);
}
