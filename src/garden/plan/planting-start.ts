import { type Day, type DaySpan, joinWords, suggestion } from "../../base/index.ts";
import { type Crop, canBegin } from "../../crops/index.ts";
import type { Bed, Person, Planting } from "../model/plan.ts";
import { isRaised } from "../model/plantings.ts";
import { diagnostic } from "./codes.ts";
import { type DayReadContext, readSpan } from "./dates.ts";
import { doubtOutsideSeason } from "./people.ts";
import type { ReadLog, WordReadContext } from "./place.ts";
import { type Tree, valueUnder, type Words, wordsUnder } from "./tree.ts";

/** What reading plantings needs. */
export type PlantingReadContext = WordReadContext &
  DayReadContext & {
    readonly year: number | null;
    readonly people: readonly Person[];
    readonly beds: readonly Bed[];
  };

/** A planting by the name that problems and the list of filled-in defaults use. */
export type LabelledReadContext = { readonly what: string; readonly reading: PlantingReadContext };

/** What is planted of a crop that is not sown; each is a way to begin and a key with their number. */
export const PLANTED_PARTS = ["cloves", "tubers", "sets", "crowns"] as const;

const STARTS: Readonly<Record<string, Planting["start"] | "seed">> = {
  "seed indoors": "seed indoors",
  indoors: "seed indoors",
  "seed outdoors": "seed outdoors",
  outdoors: "seed outdoors",
  seed: "seed",
  plants: "plants",
  bought: "plants",
  "bought plants": "plants",
  slips: "plants",
  runners: "plants",
  "winter-sown": "winter-sown",
  "winter sown": "winter-sown",
  sets: "sets",
  crowns: "crowns",
  tubers: "tubers",
  cloves: "cloves",
};

/**
 * How a planting begins: as the plan says, where the facts have that way for its crop, also by what it counts (`80 sets`),
 * else the crop's usual way,
 * listed as filled in. Problem: `unknown-word`; doubt: `start-unknown`.
 */
export function readStart(
  tree: Tree,
  crop: Crop | null,
  about: LabelledReadContext,
): Planting["start"] {
  const words = wordsUnder(tree, "from");
  const said = words && startNamed(words, about.reading);
  const seed = crop?.starts.find((start) => start.startsWith("seed")) ?? "seed outdoors";
  if (words && said) {
    const start = said === "seed" ? seed : said;
    if (!crop || canBegin(crop, start)) return start;
    about.reading.problems.push(
      diagnostic(
        "start-unknown",
        words.at,
        `The facts have no ${crop.one} from ${start}`,
        `It is reckoned from ${crop.starts[0]}; they have ${joinWords(crop.starts, "or")}`,
      ),
    );
  }
  const part = PLANTED_PARTS.find((each) => crop?.starts.includes(each) && wordsUnder(tree, each));
  if (part) return part;
  const usual = crop?.starts[0] ?? guessStart(tree);
  about.reading.filled.push({
    what: `${about.what}: from`,
    value: usual,
    why: crop ? "the usual way, by the crop facts" : "the facts do not have the crop",
  });
  return usual;
}

function startNamed(words: Words, { problems }: ReadLog): Planting["start"] | "seed" | null {
  const small = words.text.toLowerCase().replace(/^from /, "");
  const found = Object.hasOwn(STARTS, small) ? STARTS[small] : undefined;
  if (found) return found;
  const names = Object.keys(STARTS);
  problems.push(
    diagnostic(
      "unknown-word",
      words.at,
      `${words.text.slice(0, 60)} is no way to begin`,
      suggestion(
        small,
        names,
        "Write seed indoors, seed outdoors, plants, tubers, cloves, sets or crowns",
      ),
    ),
  );
  return null;
}

function guessStart(tree: Tree): Planting["start"] {
  const part = PLANTED_PARTS.find((each) => valueUnder(tree, each));
  if (part) return part;
  return valueUnder(tree, "set out") ? "plants" : "seed outdoors";
}

/** The days that a planting's own words give. */
export type PlantingDates = Pick<Planting, "fixed" | "within" | "notBefore" | "inSince">;

/**
 * The gardener's own days. A plant that is bought is planted when it is set out, and so is one raised indoors; a month to
 * set out in is a first day. Problems: `said-twice`, those of days; doubt: `outside-season`.
 */
export function readPlantingDates(
  tree: Tree,
  start: Planting["start"],
  reading: PlantingReadContext,
): PlantingDates {
  const sow = wordsUnder(tree, "sow");
  const plant = wordsUnder(tree, "plant");
  const out = wordsUnder(tree, "set out") ?? (isRaised(start) ? plant : null);
  const begin = sow ?? (isRaised(start) ? null : plant);
  for (const [first, second] of [
    [sow, isRaised(start) ? null : plant],
    [wordsUnder(tree, "set out"), isRaised(start) ? plant : null],
  ] as const)
    if (first && second)
      reading.problems.push(
        diagnostic("said-twice", second.at, "The day is said twice", "Keep one of them"),
      );
  const started = begin && readSpanWithDoubt(begin, reading);
  const planted = out && readSpanWithDoubt(out, reading);
  const wanted = wordsUnder(tree, "not before");
  const since = wordsUnder(tree, "in since");
  const notBefore = wanted && (readSpanWithDoubt(wanted, reading)?.from ?? null);
  return {
    fixed: { start: singleDay(started), out: singleDay(planted) },
    within: started && singleDay(started) === null ? started : null,
    notBefore: notBefore ?? (planted && singleDay(planted) === null ? planted.from : null),
    inSince: since && readSince(since, reading),
  };
}

/** Since when it is in the ground: any day of this season or before it. */
function readSince(words: Words, reading: PlantingReadContext): Day | null {
  const span = readSpan(words, reading);
  if (span && reading.season && span.from > reading.season.to)
    doubtOutsideSeason(span, words, reading);
  return span?.from ?? null;
}

const singleDay = (span: DaySpan | null) => (span && span.from === span.to ? span.from : null);

function readSpanWithDoubt(words: Words, reading: PlantingReadContext): DaySpan | null {
  const span = readSpan(words, reading);
  if (span) doubtOutsideSeason(span, words, reading);
  return span;
}
