import { type Day, latest, partsOf, plus, sayDay } from "../../base/index.ts";
import type { FrostDates, Site } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import type { WrittenDate } from "./dates.ts";
import {
  type BothFrostSides,
  bothSides,
  type DatedFrostSide,
  type FrostReadContext,
  formatFrostDates,
  isFrostless,
  readFrostSide,
} from "./frost-sides.ts";
import { NIGHT_KEYS } from "./nights.ts";
import { type Tree, wordsUnder } from "./tree.ts";
import { inCalendarYear, inYear, usualFrosts } from "./usual-frosts.ts";

/**
 * Days from the usual frost date to the early and the late one, where a plan gives one date.
 * Source: NOAA NCEI, 2011, U.S. Climate Normals 1981-2010, Supplemental; the median gap between the 50 and 90 % dates
 * of 32 °F frosts over 50 stations.
 */
export const FROST_SPREAD_DAYS = 15;

/**
 * How far a date may be from the weather file's own before it is doubted [days]. Source: house rule: beyond twice the
 * usual spread it belongs to another place.
 */
const UNLIKE_OWN_DAYS = 2 * FROST_SPREAD_DAYS;

/**
 * Frost dates of a site; `frostless` is true for a place without frost, and false for one whose dates are wrong and
 * reported.
 */
export type Frosts = Pick<Site, "lastFrost" | "firstFrost" | "killingFrost"> & {
  readonly frostless: boolean;
};

const NOTHING: Frosts = { lastFrost: null, firstFrost: null, killingFrost: null, frostless: false };

/**
 * Last and first frost of a plan's season, those before and after its summer, either side of New Year, in the
 * gardener's own words, else from the weather's own dates. Both null for a place without frost, and where something is
 * wrong and has been reported. The killing frost is the weather's, never before the first frost, else null. Problems:
 * those of days, `missing`, `frost-order`, `frost-half`, `frosts-crossed`; doubt: `frost-unlike-weather`. What was
 * filled in is listed.
 */
export function readFrosts(
  tree: Tree | null,
  latitude: number | null,
  reading: FrostReadContext,
): Frosts {
  const last = readFrostSide(tree, "last", reading);
  const first = readFrostSide(tree, "first", reading);
  if (!last || !first) return NOTHING;
  if (isFrostless(last, first, reading)) return { ...NOTHING, frostless: true };
  const whole = bothSides(last, first, reading);
  if (whole === null || reading.year === null) return NOTHING;
  const found = frostsInSeason(whole, { latitude, reading, year: reading.year });
  if (found === null) return NOTHING;
  doubtUnlike(tree, found, reading);
  return { ...found, killingFrost: killingOf(found.firstFrost, reading), frostless: false };
}

/** The weather's own dates of the killing frost, none of them before the first frost. */
function killingOf(
  first: FrostDates,
  { weatherFrosts, filled }: FrostReadContext,
): FrostDates | null {
  const found = weatherFrosts?.frosts.killing ?? null;
  if (weatherFrosts === null || found === null || found.dates === "none") return null;
  const { early, usual, late } = found.dates;
  const dates: FrostDates = {
    early: latest(early, first.early),
    usual: latest(usual, first.usual),
    late: latest(late, first.late),
    given: 3,
  };
  const why = [weatherFrosts.from, ...found.notes].join("; ");
  filled.push({ what: "killing frost, 28 °F", value: formatFrostDates(dates), why });
  return dates;
}

/** Dates of the gardener's own that are far from the weather's belong to another place, or are slips. */
function doubtUnlike(
  tree: Tree | null,
  found: { readonly lastFrost: FrostDates; readonly firstFrost: FrostDates },
  { weatherFrosts, problems }: FrostReadContext,
): void {
  for (const side of ["last", "first"] as const) {
    const key = NIGHT_KEYS[side][32];
    const words = wordsUnder(tree, key);
    const theirs = weatherFrosts?.frosts[side]?.dates;
    if (!weatherFrosts || !words || !theirs) continue;
    const { usual } = side === "last" ? found.lastFrost : found.firstFrost;
    const off = theirs === "none" ? null : daysApart(usual, theirs.usual);
    if (off !== null && off <= UNLIKE_OWN_DAYS) continue;
    const is =
      theirs === "none" || off === null
        ? `${weatherFrosts.name} has no frost`
        : `${weatherFrosts.name} has its ${key} about ${sayDay(theirs.usual)}, ${off} days from ${sayDay(usual)}`;
    const check = "Check that the date and the weather are of this place";
    problems.push(diagnostic("frost-unlike-weather", words.at, is, check));
  }
}

/** Days between two days of the year, whichever year they are in. */
function daysApart(a: Day, b: Day): number {
  const off = Math.abs(a - b) % 365;
  return Math.min(off, 365 - off);
}

type FrostSeasonContext = {
  readonly latitude: number | null;
  readonly reading: FrostReadContext;
  readonly year: number;
};

/** Last and first frost in the plan's season, or null and reported. */
function frostsInSeason(
  sides: BothFrostSides,
  { latitude, reading, year }: FrostSeasonContext,
): { readonly lastFrost: FrostDates; readonly firstFrost: FrostDates } | null {
  const { last, first } = sides;
  const found = usualFrosts(sides, latitude, year);
  const crossed = found === null;
  const { usualLast, usualFirst } = found ?? inCalendarYear(sides, year);
  const lastFrost = spreadFrostDates(last, usualLast, { reading, name: "last frost" });
  const firstFrost = spreadFrostDates(first, usualFirst, { reading, name: "first frost" });
  if (!lastFrost || !firstFrost) return null;
  if (!crossed) return { lastFrost, firstFrost };
  reading.problems.push(
    diagnostic(
      "frosts-crossed",
      first.kind === "own" ? first.at : first.words.at,
      `First frost ${sayDay(usualFirst)} does not end a summer that begins ${sayDay(usualLast)}`,
      "Write spring's last frost and autumn's first one; south of the equator latitude is negative",
    ),
  );
  return null;
}

function spreadFrostDates(
  side: DatedFrostSide,
  usual: Day,
  around: { readonly reading: FrostReadContext; readonly name: string },
): FrostDates | null {
  if (side.kind === "own") return side.dates;
  const [first, second, third] = side.dates;
  if (!second || !third) return spreadOne(usual, around);
  const early = nearestTo(usual, first);
  const late = nearestTo(usual, third);
  if (early <= usual && usual <= late) return { early, usual, late, given: 3 };
  around.reading.problems.push(
    diagnostic(
      "frost-order",
      side.words.at,
      `${side.words.text.slice(0, 60)} are not in order`,
      "Write the early, the usual and the late date",
    ),
  );
  return null;
}

function spreadOne(
  usual: Day,
  { reading, name }: { readonly reading: FrostReadContext; readonly name: string },
): FrostDates {
  const early = plus(usual, -FROST_SPREAD_DAYS);
  const late = plus(usual, FROST_SPREAD_DAYS);
  reading.filled.push({
    what: name,
    value: `early ${sayDay(early)}, late ${sayDay(late)}`,
    why: `${FROST_SPREAD_DAYS} days either side of the usual date, the middle of NOAA's stations`,
  });
  return { early, usual, late, given: 1 };
}

function nearestTo(day: Day, written: WrittenDate): Day {
  if (written.year !== null) return inYear(written, written.year);
  const { year } = partsOf(day);
  const around = [year - 1, year, year + 1].map((y) => inYear(written, y));
  return around.reduce((best, d) => (Math.abs(d - day) < Math.abs(best - day) ? d : best));
}
