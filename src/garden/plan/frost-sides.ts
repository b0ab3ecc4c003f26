import { type Problem, sayDay, type TextPosition } from "../../base/index.ts";
import type { FilledDefault, FrostDates } from "../model/plan.ts";
import { plusYears } from "../model/season.ts";
import { diagnostic } from "./codes.ts";
import { readWrittenDate, type WrittenDate } from "./dates.ts";
import { type FrostSide, NIGHT_KEYS } from "./nights.ts";
import type { StationFrosts } from "./station-frosts.ts";
import { splitWords, type Tree, valueUnder, type Words, wordsUnder } from "./tree.ts";

/**
 * The weather's own frost dates with its name; `from` has its years, a note where they are few, and the position of its
 * name in the plan.
 */
export type WeatherFrosts = {
  readonly frosts: StationFrosts;
  readonly name: string;
  readonly from: string;
  readonly at: TextPosition;
};

/** What reading frost dates needs. */
export type FrostReadContext = {
  readonly problems: Problem[];
  readonly filled: FilledDefault[];
  readonly year: number | null;
  /** Null where the plan names no weather, or it is wrong and has been reported. */
  readonly weatherFrosts: WeatherFrosts | null;
};

/** The usual date, or early, usual and late, as written. */
export type OneOrThree = readonly [WrittenDate] | readonly [WrittenDate, WrittenDate, WrittenDate];

/** What gives one side: the gardener's words, or the weather's own dates. */
export type FrostSideDates =
  | { readonly kind: "none"; readonly at: TextPosition; readonly written: boolean }
  | { readonly kind: "written"; readonly words: Words; readonly dates: OneOrThree }
  | { readonly kind: "own"; readonly at: TextPosition; readonly dates: FrostDates };

function readFrostWords(words: Words, { problems }: FrostReadContext): FrostSideDates | null {
  if (/^(?:none|never)$/i.test(words.text)) return { kind: "none", at: words.at, written: true };
  const pieces = splitWords(words, /, *(?!\d{4}\b)/);
  const read = pieces.map((piece) => ({ piece, found: readWrittenDate(piece.text) }));
  const wrong = read.flatMap(({ piece, found }) =>
    "wrong" in found
      ? [diagnostic(found.wrong.code, piece.at, found.wrong.is, found.wrong.shouldBe)]
      : [],
  );
  problems.push(...wrong);
  const dates = read.flatMap(({ found }) => ("ok" in found ? [found.ok] : []));
  if (wrong.length > 0) return null;
  const [one, two, three] = dates;
  if (one && dates.length === 1) return { kind: "written", words, dates: [one] };
  if (one && two && three && dates.length === 3)
    return { kind: "written", words, dates: [one, two, three] };
  problems.push(
    diagnostic(
      "frost-order",
      words.at,
      `${dates.length} frost dates stand here`,
      "Write the usual one, or three: early, usual, late",
    ),
  );
  return null;
}

/**
 * The last or first frost of a place: from the gardener's own words, else from the weather's own dates, which are
 * listed as filled in; null where something is wrong and has been reported. Problems: those of days, `frost-order`, and
 * `missing` where neither gives one.
 */
export function readFrostSide(
  tree: Tree | null,
  side: FrostSide,
  reading: FrostReadContext,
): FrostSideDates | null {
  const key = NIGHT_KEYS[side][32];
  const words = wordsUnder(tree, key);
  if (words) return readFrostWords(words, reading);
  const { weatherFrosts, problems, filled } = reading;
  if (weatherFrosts === null || valueUnder(tree, key)) return null;
  const found = weatherFrosts.frosts[side];
  if (found === null) {
    problems.push(
      diagnostic(
        "missing",
        weatherFrosts.at,
        `${key} is missing, and ${weatherFrosts.name} has none`,
        HOW[side],
      ),
    );
    return null;
  }
  const { dates, notes } = found;
  if (dates === "none") return { kind: "none", at: weatherFrosts.at, written: false };
  filled.push({
    what: key,
    value: formatFrostDates(dates),
    why: [weatherFrosts.from, ...notes].join("; "),
  });
  return { kind: "own", at: weatherFrosts.at, dates };
}

/** Whether neither side has frost; where the weather says so, it is listed as filled in. */
export function isFrostless(
  last: FrostSideDates,
  first: FrostSideDates,
  { weatherFrosts, filled }: FrostReadContext,
): boolean {
  if (last.kind !== "none" || first.kind !== "none") return false;
  for (const [side, { written }] of [["last", last] as const, ["first", first] as const])
    if (weatherFrosts && !written)
      filled.push({ what: NIGHT_KEYS[side][32], value: "none", why: weatherFrosts.from });
  return true;
}

const HOW: Readonly<Record<FrostSide, string>> = {
  last: "Write last frost: about 6 May, or none",
  first: "Write first frost: about 2 Oct, or none",
};

/** `early 20 Apr, usual 6 May, late 21 May`. */
export const formatFrostDates = ({ early, usual, late }: FrostDates) =>
  `early ${sayDay(early)}, usual ${sayDay(usual)}, late ${sayDay(late)}`;

const frostDatesInYears = (
  { early, usual, late, given }: FrostDates,
  years: number,
): FrostDates => ({
  early: plusYears(early, years),
  usual: plusYears(usual, years),
  late: plusYears(late, years),
  given,
});

/** A side that has dates. */
export type DatedFrostSide = Exclude<FrostSideDates, { readonly kind: "none" }>;
/** Both sides, dated. */
export type BothFrostSides = { readonly last: DatedFrostSide; readonly first: DatedFrostSide };

/**
 * Both sides with their dates, or null and reported. Where the weather's own years have frost on one side only, that
 * winter's nights are both its first and its last. Problem: `frost-half`.
 */
export function bothSides(
  last: FrostSideDates,
  first: FrostSideDates,
  { problems, filled, weatherFrosts }: FrostReadContext,
): BothFrostSides | null {
  if (last.kind !== "none" && first.kind !== "none") return { last, first };
  const none = last.kind === "none" ? last : first;
  const some = last.kind === "none" ? first : last;
  if (weatherFrosts && some.kind === "own" && none.kind === "none" && !none.written) {
    const taken: DatedFrostSide = {
      ...some,
      dates: frostDatesInYears(some.dates, last.kind === "none" ? -1 : 1),
    };
    const what = last.kind === "none" ? "last frost" : "first frost";
    const why = `${weatherFrosts.name} has none; the same winter's other date stands in`;
    filled.push({ what, value: formatFrostDates(taken.dates), why });
    return last.kind === "none" ? { last: taken, first: some } : { last: some, first: taken };
  }
  const at = none.kind === "none" ? none.at : weatherFrosts?.at;
  if (at)
    problems.push(
      diagnostic(
        "frost-half",
        at,
        "Only one of last frost and first frost has a date",
        "Write dates for both, or none for both",
      ),
    );
  return null;
}
