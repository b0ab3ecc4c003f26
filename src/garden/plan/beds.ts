import {
  numberFrom,
  type Problem,
  type Quantity,
  quantity,
  suggestion,
  unitFrom,
} from "../../base/index.ts";
import { FILM } from "../../crops/index.ts";
import type { Bed, FilledDefault } from "../model/plan.ts";
import { readBags } from "./bags.ts";
import { notOfABed } from "./bed-words.ts";
import { diagnostic } from "./codes.ts";
import { readCovers, readFixtures, readMulch } from "./details.ts";
import { readDrip } from "./drip.ts";
import { type Heat, type House, heatIn, houseIn } from "./houses.ts";
import { namer } from "./names.ts";
import { type ReadLog, unclearQuantity } from "./place.ts";
import {
  entriesOf,
  splitWords,
  type Tree,
  type TreeEntry,
  type Words,
  wordsUnder,
} from "./tree.ts";

/** What the reading of a bed needs to know: where to log, and what the place's greenhouse is kept above. */
type BedReading = ReadLog & { readonly heated: Quantity | null };

/**
 * The beds of a plan in the order of the file. A bed's key is the slug of its `was:` name, else of its name. `heated` is
 * what the greenhouse of the place is kept above, which its beds share. Problems: `alike`, `name-unfit`,
 * `quantity-unclear`, `unknown-word`. Bag sizes that were filled in are listed, and heat that was not given.
 */
export function readBeds(
  tree: Tree | null,
  log: ReadLog,
  heated: Quantity | null = null,
): readonly Bed[] {
  const reading = { ...log, heated };
  const name = namer("bed", reading.problems);
  return entriesOf(tree).flatMap((entry) => {
    const key = name(wordsUnder(entry.value, "was") ?? entry.key);
    return key === null ? [] : [readBed(entry, key, reading)];
  });
}

function readBed({ key: name, value }: TreeEntry, key: string, reading: BedReading): Bed {
  const is = wordsUnder(value, "is");
  const made = is ? readKind(is, name.text, reading) : plainBed;
  const warmed = readWarmed(wordsUnder(value, "warmed by"), reading.problems);
  const drip = readDrip(wordsUnder(value, "drip"), reading.problems);
  return {
    key,
    name: name.text,
    ...made,
    warmed,
    covers: readCovers(value, "cover", reading),
    mulch: readMulch(value, reading),
    has: readFixtures(value, reading),
    drip,
    at: name.at,
  };
}

type Made = Pick<Bed, "kind" | "house" | "keptAbove" | "lengthCm" | "widthCm" | "bags">;
const plainBed: Made = {
  kind: "bed",
  house: null,
  keptAbove: null,
  lengthCm: null,
  widthCm: null,
  bags: null,
};

/** Bags by their number, with what one holds before or behind it: `6 grow bags of 10 gal`, `4 40-litre pots`. */
const BAGS =
  /^(\d+)(?: ?[x×] ?| )(?:([\d.,]+[- ]?(?:gal|gallons?|l|lit(?:re|er)s?)) )?(?:(?:grow|fabric|plastic|clay|wooden|half|big|large|small) ?)*(?:bags?|pots?|tubs?|barrels?|buckets?|containers?|planters?|(?:hanging )?baskets?)(?: (of .+|.+ each))?$/i;

/** A bed of the plain kind, which its size alone follows. */
const PLAIN = /^(?:a |the )?(?:raised |open |garden )?(?:bed|row|border|plot)$/i;

function readKind(is: Words, name: string, reading: BedReading): Made {
  const pieces = splitWords(is, /,(?!\d)/);
  const [first, ...rest] = pieces;
  if (!first) return plainBed;
  const bags = BAGS.exec(first.text);
  if (bags && Number(bags[1]) < 1)
    reading.problems.push(
      diagnostic("out-of-range", first.at, "No bags stand here", "Write how many"),
    );
  if (bags) {
    const words = {
      count: Number(bags[1]),
      each: bags[2]?.replace("-", " ") ?? bags[3] ?? "",
      first,
      rest,
    };
    return { ...plainBed, kind: "bags", bags: readBags(words, name, reading) };
  }
  const house = houseIn(first.text);
  if (house) return readHouse(house, rest, { name, reading });
  const sized = PLAIN.test(first.text) ? rest : pieces;
  const size = sized[0] ? readSize(sized[0], reading.problems) : null;
  for (const extra of sized.slice(1)) reading.problems.push(notOfABed(extra));
  return { ...plainBed, lengthCm: size?.length ?? null, widthCm: size?.width ?? null };
}

/** A bed under glass or film, read with its heat and its size in any order. */
function readHouse(
  { heat: said, of }: House,
  rest: readonly Words[],
  { name, reading }: { readonly name: string; readonly reading: BedReading },
): Made {
  let heat: Heat | null = said;
  let size: Size | null = null;
  for (const words of rest) {
    const found = heatIn(words.text);
    if (found === "unclear")
      reading.problems.push(unclearQuantity(words, "a temperature", "kept above 5 °C"));
    else if (found) heat = found;
    else if (size) reading.problems.push(notOfABed(words));
    else size = readSize(words, reading.problems);
  }
  const usual = of === "glass" ? reading.heated : null;
  if (heat === null) reading.filled.push(heatFilledIn(name, usual));
  const keptAbove = heat ? heat.keptAbove : usual;
  return {
    kind: "greenhouse",
    house: of,
    keptAbove,
    lengthCm: size?.length ?? null,
    widthCm: size?.width ?? null,
    bags: null,
  };
}

function heatFilledIn(name: string, keptAbove: Quantity | null): FilledDefault {
  const what = `heat in ${name}`;
  return keptAbove
    ? { what, value: "as in the greenhouse of the place", why: "it is taken for the same house" }
    : { what, value: "none", why: "no heater is named; if there is one: kept above 5 °C" };
}

type Size = { readonly length: Quantity; readonly width: Quantity };

/** The longer side is the length, in whichever order they are written; rows run along it. */
function readSize(words: Words, problems: Problem[]): Size | null {
  const found =
    /^([\d.,/½¼¾ ]+?)\s*([^\d\s.,x×*]*)\s*(?:x|×|\*|by)\s*([\d.,/½¼¾ ]+?)\s*(\D*)$/iu.exec(
      words.text,
    );
  if (!found) {
    problems.push(notOfABed(words));
    return null;
  }
  const unit = unitFrom(found[4] ?? "");
  const firstUnit = found[2] ? unitFrom(found[2]) : unit;
  const a = numberFrom(found[1] ?? "");
  const b = numberFrom(found[3] ?? "");
  if (unit === null || firstUnit === null || a === null || b === null || a <= 0 || b <= 0) {
    problems.push(unclearQuantity(words, "a size", "12 x 4 ft or 3.6 x 1.2 m"));
    return null;
  }
  const sides = [quantity(a, firstUnit), quantity(b, unit)];
  const [width, length] = sides.sort((p, q) => p.si - q.si);
  if (!length || !width || length.kind !== "length" || width.kind !== "length") {
    problems.push(unclearQuantity(words, "a size", "12 x 4 ft or 3.6 x 1.2 m"));
    return null;
  }
  return { length, width };
}

function readWarmed(words: Words | null, problems: Problem[]): boolean {
  if (words === null) return false;
  const small = words.text.toLowerCase().replace(/^(?:a|the) /, "");
  if (FILM.words.some((word) => word === small)) return true;
  problems.push(
    diagnostic(
      "unknown-word",
      words.at,
      `${words.text.slice(0, 60)} is not known to warm a bed`,
      suggestion(small, FILM.words, "Write black film or black fabric"),
    ),
  );
  return false;
}
