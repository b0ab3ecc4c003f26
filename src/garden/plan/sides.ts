import { sayDay } from "../../base/days/day.ts";
import type { Place, Problem } from "../../base/problems/problem.ts";
import type { Filled, FrostDates } from "../model/plan.ts";
import { sameDay } from "../model/season.ts";
import { tell } from "./codes.ts";
import { readWritten, type Written } from "./dates.ts";
import { NIGHT_KEYS, type Side } from "./nights.ts";
import type { OwnFrosts } from "./own.ts";
import { partsOfWords, type Tree, under, type Words, wordsUnder } from "./tree.ts";

/** The weather's own frost dates; what to call it, with its years in `from`, and that they are few; and where the plan names it. */
export type Own = {
  readonly frosts: OwnFrosts;
  readonly name: string;
  readonly from: string;
  readonly at: Place;
};

/** What reading frost dates needs. */
export type FrostReading = {
  readonly told: Problem[];
  readonly filled: Filled[];
  readonly year: number | null;
  /** Null where the plan names no weather, or it is wrong and told. */
  readonly own: Own | null;
};

/** The usual date, or early, usual and late, as written. */
export type OneOrThree = readonly [Written] | readonly [Written, Written, Written];

/** What stands for one side: the gardener's words, or the weather's own dates. */
export type Dates =
  | { readonly kind: "none"; readonly at: Place; readonly written: boolean }
  | { readonly kind: "written"; readonly words: Words; readonly dates: OneOrThree }
  | { readonly kind: "own"; readonly at: Place; readonly dates: FrostDates };

function datesOf(words: Words, { told }: FrostReading): Dates | null {
  if (/^(?:none|never)$/i.test(words.text)) return { kind: "none", at: words.at, written: true };
  const pieces = partsOfWords(words, /, *(?!\d{4}\b)/);
  const read = pieces.map((piece) => ({ piece, found: readWritten(piece.text) }));
  const wrong = read.flatMap(({ piece, found }) =>
    "wrong" in found
      ? [tell(found.wrong.code, piece.at, found.wrong.is, found.wrong.shouldBe)]
      : [],
  );
  told.push(...wrong);
  const dates = read.flatMap(({ found }) => ("ok" in found ? [found.ok] : []));
  if (wrong.length > 0) return null;
  const [one, two, three] = dates;
  if (one && dates.length === 1) return { kind: "written", words, dates: [one] };
  if (one && two && three && dates.length === 3)
    return { kind: "written", words, dates: [one, two, three] };
  told.push(
    tell(
      "frost-order",
      words.at,
      `${dates.length} frost dates stand here`,
      "Write the usual one, or three: early, usual, late",
    ),
  );
  return null;
}

/**
 * What a place says of its last or first frost: the gardener's own words, else the weather's own dates, which are
 * listed as filled in; null where something is wrong and told. Problems: those of days, `frost-order`, and `missing`
 * where neither says anything.
 */
export function sideOf(tree: Tree | null, side: Side, reading: FrostReading): Dates | null {
  const key = NIGHT_KEYS[side][32];
  const words = wordsUnder(tree, key);
  if (words) return datesOf(words, reading);
  const { own, told, filled } = reading;
  if (own === null || under(tree, key)) return null;
  const found = own.frosts[side];
  if (found === null) {
    told.push(tell("missing", own.at, `${key} is missing, and ${own.name} has none`, HOW[side]));
    return null;
  }
  const { dates, notes } = found;
  if (dates === "none") return { kind: "none", at: own.at, written: false };
  filled.push({ what: key, value: sayThree(dates), why: [own.from, ...notes].join("; ") });
  return { kind: "own", at: own.at, dates };
}

/** Whether neither side has frost; what the weather says of it is listed. */
export function isFrostless(last: Dates, first: Dates, { own, filled }: FrostReading): boolean {
  if (last.kind !== "none" || first.kind !== "none") return false;
  for (const [side, { written }] of [["last", last] as const, ["first", first] as const])
    if (own && !written) filled.push({ what: NIGHT_KEYS[side][32], value: "none", why: own.from });
  return true;
}

const HOW: Readonly<Record<Side, string>> = {
  last: "Write last frost: about 6 May, or none",
  first: "Write first frost: about 2 Oct, or none",
};

/** `early 20 Apr, usual 6 May, late 21 May`. */
export const sayThree = ({ early, usual, late }: FrostDates) =>
  `early ${sayDay(early)}, usual ${sayDay(usual)}, late ${sayDay(late)}`;

const yearOn = ({ early, usual, late, given }: FrostDates, years: number): FrostDates => ({
  early: sameDay(early, years),
  usual: sameDay(usual, years),
  late: sameDay(late, years),
  given,
});

/** A side that has dates. */
export type Dated = Exclude<Dates, { readonly kind: "none" }>;
/** Both sides, dated. */
export type Both = { readonly last: Dated; readonly first: Dated };

/**
 * Both sides dated, or null and told. Where the weather's own years have frost on one side alone, that winter's
 * nights are both its first and its last. Problem: `frost-half`.
 */
export function bothSides(
  last: Dates,
  first: Dates,
  { told, filled, own }: FrostReading,
): Both | null {
  if (last.kind !== "none" && first.kind !== "none") return { last, first };
  const none = last.kind === "none" ? last : first;
  const some = last.kind === "none" ? first : last;
  if (own && some.kind === "own" && none.kind === "none" && !none.written) {
    const taken: Dated = { ...some, dates: yearOn(some.dates, last.kind === "none" ? -1 : 1) };
    const what = last.kind === "none" ? "last frost" : "first frost";
    const why = `${own.name} has none; the same winter's other date stands in`;
    filled.push({ what, value: sayThree(taken.dates), why });
    return last.kind === "none" ? { last: taken, first: some } : { last: some, first: taken };
  }
  const at = none.kind === "none" ? none.at : own?.at;
  if (at)
    told.push(
      tell(
        "frost-half",
        at,
        "Only one of last frost and first frost has a date",
        "Write dates for both, or none for both",
      ),
    );
  return null;
}
