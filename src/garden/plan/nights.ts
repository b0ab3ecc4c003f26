import { type Day, dayOf, dayOrThrow, type Problem, plus } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import { readWrittenDate, type WrittenDate } from "./dates.ts";
import { splitWords, type Tree, valueUnder, type Words } from "./tree.ts";

/** The nights whose dates a weather file may have [°F]: light frost near the ground, frost, and the killing frost. */
export const NIGHTS_F = [36, 32, 28] as const;

/** One of them. */
export type NightF = (typeof NIGHTS_F)[number];

/** The last nights before a summer, or the first ones after it. */
export type FrostSide = "last" | "first";

/** The keys of a weather file for nights of each temperature, in the order they are written. */
export const NIGHT_KEYS = {
  last: { 36: "last night at 36 °F", 32: "last frost", 28: "last night at 28 °F" },
  first: { 36: "first night at 36 °F", 32: "first frost", 28: "first night at 28 °F" },
} as const;

/** Early, usual and late; null where too many years have no such night for a date. */
export type ThreeDates = readonly [Day | null, Day | null, Day | null];

/** The dates of nights in a weather file, as days of a plan's own season; null for nights it does not have. */
export type FrostNights = Readonly<Record<FrostSide, Readonly<Record<NightF, ThreeDates | null>>>>;

/** The season that dates are placed in: the plan's year and hemisphere. */
export type NightReadContext = {
  readonly year: number;
  readonly south: boolean;
  /** Days on either side of a usual date given alone. */
  readonly spreadDays: number;
  readonly problems: Problem[];
};

const HOW = "Write early, usual and late, such as [20 Apr, 6 May, 21 May], one date, or none";

/**
 * The nights that a weather file has dates for. Problems: those of days, and `weather-wrong` where there are neither
 * one nor three dates, or they are not in order.
 */
export function readNights(tree: Tree, placing: NightReadContext): FrostNights {
  const side = (side: FrostSide) => {
    const one = (nightF: NightF) =>
      readNightDates(valueUnder(tree, NIGHT_KEYS[side][nightF]), side, placing);
    return { 36: one(36), 32: one(32), 28: one(28) };
  };
  return { last: side("last"), first: side("first") };
}

/** The words of each date, in a list or between commas. */
function piecesOf(tree: Tree): readonly Words[] {
  if (tree.kind === "words") return splitWords(tree.words, /, *(?!\d{4}\b)/);
  if (tree.kind !== "list") return [];
  return tree.items.flatMap((item) => (item.kind === "words" ? [item.words] : []));
}

const isNone = ({ text }: Words) => /^(?:none|never)$/i.test(text);

function readNightDates(
  tree: Tree | null,
  side: FrostSide,
  placing: NightReadContext,
): ThreeDates | null {
  if (tree === null) return null;
  const pieces = piecesOf(tree);
  const days = pieces.map((piece) => (isNone(piece) ? null : readNightDay(piece, side, placing)));
  if (days.some((day) => day === "wrong")) return null;
  const right = days.flatMap((day) => (day === "wrong" ? [] : [day]));
  const [early, usual, late] = right;
  if (right.length === 1 && early !== undefined) return aroundOne(early, placing.spreadDays);
  if (right.length === 3 && early !== undefined && usual !== undefined && late !== undefined) {
    const three: ThreeDates = [early, usual, late];
    if (isAscending(three, side)) return three;
  }
  const is =
    right.length === 3 ? "These dates are not in order" : `${right.length} dates stand here`;
  placing.problems.push(diagnostic("weather-wrong", tree.at, is, HOW));
  return null;
}

function aroundOne(day: Day | null, spread: number): ThreeDates {
  return day === null ? [null, null, null] : [plus(day, -spread), day, plus(day, spread)];
}

/** Years without such a night count as before all dates in spring, and as after all dates in autumn. */
function isAscending(three: ThreeDates, side: FrostSide): boolean {
  const without = side === "last" ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const [early, usual, late] = three.map((day) => day ?? without);
  return early !== undefined && usual !== undefined && late !== undefined
    ? early <= usual && usual <= late
    : false;
}

function readNightDay(piece: Words, side: FrostSide, placing: NightReadContext): Day | "wrong" {
  const read = readWrittenDate(piece.text);
  if ("ok" in read) return nightInSeason(read.ok, side, placing);
  placing.problems.push(diagnostic(read.wrong.code, piece.at, read.wrong.is, read.wrong.shouldBe));
  return "wrong";
}

/** The season that a date is placed in: a year, and whether its summer is that of the south. */
export type SeasonPlace = { readonly year: number; readonly south: boolean };

/**
 * The day of that month and date in the winter that its side searches: before the midsummer of the plan's season for
 * last nights, after it for first ones, whichever calendar year that is: a last frost in December is of the year before.
 * Midsummer ends with 31 July, in the south with 31 January. 28 February for a 29th that the year lacks.
 */
export function nightInSeason(
  { month, date }: Pick<WrittenDate, "month" | "date">,
  side: FrostSide,
  { year, south }: SeasonPlace,
): Day {
  const midsummer = south ? dayOrThrow(year + 1, 1, 31) : dayOrThrow(year, 7, 31);
  const on = (y: number) => dayOf(y, month, date) ?? dayOrThrow(y, month, 28);
  const days = [year - 1, year, year + 1, year + 2].map(on);
  const before = days.filter((day) => day <= midsummer).at(-1);
  const after = days.find((day) => day > midsummer);
  return (side === "last" ? before : after) ?? on(year);
}
