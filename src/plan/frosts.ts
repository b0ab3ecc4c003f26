import { type Day, dayOf, midway, partsOf, plus, sayDay, theDay } from "../days/day.ts";
import type { Problem } from "../problems/problem.ts";
import { tell } from "./codes.ts";
import { readWritten, type Written } from "./dates.ts";
import type { Filled, FrostDates, Site } from "./plan.ts";
import { sameDay } from "./season.ts";
import { entryOf, partsOfWords, type Tree, type Words, wordsUnder } from "./tree.ts";

/**
 * Days from the usual frost date to the early and the late one, where a plan gives one date.
 * Source: NOAA NCEI, 2011, U.S. Climate Normals 1981-2010, Supplemental; the median gap between the 50 and 90 % dates
 * of 32 °F frosts over 50 stations.
 */
export const FROST_SPREAD_DAYS = 15;

/**
 * How far the middle of the frosty time may lie from midwinter (15 January, south 15 July) [days].
 * Source: house rule: at the stations of NOAA NCEI's normals it lies within a month of it; twice that is no winter.
 */
const MOST_FROM_MIDWINTER = 60;

/** Nearer the equator than this [degrees] frost follows height, not winter. Source: house rule. */
const NO_WINTER_WITHIN = 10;

type Frosts = Pick<Site, "lastFrost" | "firstFrost">;
type Reading = {
  readonly told: Problem[];
  readonly filled: Filled[];
  readonly year: number | null;
};
type Dates = { readonly words: Words; readonly dates: readonly Written[] | null } | "none";

const NOTHING: Frosts = { lastFrost: null, firstFrost: null };

/**
 * Last and first frost of a plan's season: the last one in the plan's year, the first one the next after it.
 * Both null for a place without frost, and where something is wrong and told. Problems: those of days,
 * `frost-order`, `frost-half`, `frosts-crossed`. Lists the early and late dates it filled in.
 */
export function readFrosts(tree: Tree | null, latitude: number | null, reading: Reading): Frosts {
  const lastWords = wordsUnder(tree, "last frost");
  const firstWords = wordsUnder(tree, "first frost");
  const last = lastWords && datesOf(lastWords, reading);
  const first = firstWords && datesOf(firstWords, reading);
  if (!last || !first || !lastWords || !firstWords) return NOTHING;
  if (last === "none" && first === "none") return NOTHING;
  if (last === "none" || first === "none") {
    reading.told.push(
      tell(
        "frost-half",
        (last === "none" ? lastWords : firstWords).at,
        "Only one of last frost and first frost has a date",
        "Write dates for both, or none for both",
      ),
    );
    return NOTHING;
  }
  if (last.dates === null || first.dates === null || reading.year === null) return NOTHING;
  return placed(last.dates, first.dates, { lastWords, firstWords, latitude, tree, reading });
}

function datesOf(words: Words, { told }: Reading): Dates {
  if (/^(?:none|never)$/i.test(words.text)) return "none";
  const pieces = partsOfWords(words, /, *(?!\d{4}\b)/);
  const read = pieces.map((piece) => ({ piece, found: readWritten(piece.text) }));
  const wrong = read.flatMap(({ piece, found }) =>
    "wrong" in found
      ? [tell(found.wrong.code, piece.at, found.wrong.is, found.wrong.shouldBe)]
      : [],
  );
  told.push(...wrong);
  const dates = read.flatMap(({ found }) => ("ok" in found ? [found.ok] : []));
  if (wrong.length > 0) return { words, dates: null };
  if (dates.length === 1 || dates.length === 3) return { words, dates };
  told.push(
    tell(
      "frost-order",
      words.at,
      `${dates.length} frost dates stand here`,
      "Write the usual one, or three: early, usual, late",
    ),
  );
  return { words, dates: null };
}

type Around = {
  readonly lastWords: Words;
  readonly firstWords: Words;
  readonly latitude: number | null;
  readonly tree: Tree | null;
  readonly reading: Reading;
};

function placed(last: readonly Written[], first: readonly Written[], around: Around): Frosts {
  const { reading } = around;
  const usualLast = inYear(last[last.length === 3 ? 1 : 0], reading.year ?? 0);
  const firstUsual = first[first.length === 3 ? 1 : 0];
  const usualFirst = firstUsual ? nextAfter(usualLast, firstUsual) : usualLast;
  const crossed = usualFirst <= usualLast || !isWinter(usualLast, usualFirst, around.latitude);
  const lastFrost = spread(last, usualLast, {
    words: around.lastWords,
    reading,
    name: "last frost",
  });
  const firstFrost = spread(first, usualFirst, {
    words: around.firstWords,
    reading,
    name: "first frost",
  });
  if (crossed && lastFrost && firstFrost) {
    const at = entryOf(around.tree, "first frost")?.value.at ?? around.firstWords.at;
    reading.told.push(
      tell(
        "frosts-crossed",
        at,
        `First frost ${sayDay(usualFirst)} does not end a summer that begins ${sayDay(usualLast)}`,
        "Write spring's last frost and autumn's first one; south of the equator latitude is negative",
      ),
    );
    return NOTHING;
  }
  return lastFrost && firstFrost ? { lastFrost, firstFrost } : NOTHING;
}

/** In the plan's year, whatever the season; 28 February for a 29th that the year lacks. */
function inYear(written: Written | undefined, year: number): Day {
  if (!written) return theDay(year, 1, 1);
  const { month, date } = written;
  return dayOf(written.year ?? year, month, date) ?? theDay(written.year ?? year, month, 28);
}

function nextAfter(day: Day, written: Written): Day {
  if (written.year !== null) return inYear(written, written.year);
  const same = inYear(written, partsOf(day).year);
  return same > day ? same : sameDay(same, 1);
}

function isWinter(last: Day, first: Day, latitude: number | null): boolean {
  if (latitude !== null && Math.abs(latitude) < NO_WINTER_WITHIN) return true;
  const middle = midway(sameDay(first, -1), last);
  const { year } = partsOf(middle);
  const away = (month: number) =>
    Math.min(...[year - 1, year, year + 1].map((y) => Math.abs(middle - theDay(y, month, 15))));
  const north = away(1) <= MOST_FROM_MIDWINTER;
  const south = away(7) <= MOST_FROM_MIDWINTER;
  return latitude === null ? north || south : latitude > 0 ? north : south;
}

function spread(
  written: readonly Written[],
  usual: Day,
  around: { readonly words: Words; readonly reading: Reading; readonly name: string },
): FrostDates | null {
  const [first, , third] = written;
  if (!first || !third) return spreadOne(usual, around);
  const early = nearestTo(usual, first);
  const late = nearestTo(usual, third);
  if (early <= usual && usual <= late) return { early, usual, late, given: 3 };
  around.reading.told.push(
    tell(
      "frost-order",
      around.words.at,
      `${around.words.text.slice(0, 60)} are not in order`,
      "Write the early, the usual and the late date",
    ),
  );
  return null;
}

function spreadOne(
  usual: Day,
  { reading, name }: { readonly reading: Reading; readonly name: string },
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

function nearestTo(day: Day, written: Written): Day {
  if (written.year !== null) return inYear(written, written.year);
  const { year } = partsOf(day);
  const around = [year - 1, year, year + 1].map((y) => inYear(written, y));
  return around.reduce((best, d) => (Math.abs(d - day) < Math.abs(best - day) ? d : best));
}
