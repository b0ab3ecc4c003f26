import {
  numberFrom,
  type Problem,
  type Quantity,
  quantity,
  quantityFrom,
  suggestion,
  unitFrom,
} from "../../base/index.ts";
import { FILM } from "../../crops/index.ts";
import type { Bed } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { readDrip } from "./drip.ts";
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

/** The size assumed for a bag whose size is not given [in]. Source: house rule: a 12 gallon grow bag. */
const BAG = { across: 16, high: 14 } as const;

/**
 * The beds of a plan in the order of the file. A bed's key is the slug of its `was:` name, else of its name. Problems:
 * `alike`, `name-unfit`, `quantity-unclear`, `unknown-word`. Bag sizes that were filled in are listed.
 */
export function readBeds(tree: Tree | null, reading: ReadLog): readonly Bed[] {
  const name = namer("bed", reading.problems);
  return entriesOf(tree).flatMap((entry) => {
    const key = name(wordsUnder(entry.value, "was") ?? entry.key);
    return key === null ? [] : [readBed(entry, key, reading)];
  });
}

function readBed({ key: name, value }: TreeEntry, key: string, reading: ReadLog): Bed {
  const is = wordsUnder(value, "is");
  const made = is ? readKind(is, name.text, reading) : plainBed;
  const warmed = readWarmed(wordsUnder(value, "warmed by"), reading.problems);
  const drip = readDrip(wordsUnder(value, "drip"), reading.problems);
  return { key, name: name.text, ...made, warmed, drip, at: name.at };
}

type Made = Pick<Bed, "kind" | "lengthCm" | "widthCm" | "bags">;
const plainBed: Made = { kind: "bed", lengthCm: null, widthCm: null, bags: null };

function readKind(is: Words, name: string, reading: ReadLog): Made {
  const pieces = splitWords(is, /,(?!\d)/);
  const [first, ...rest] = pieces;
  if (!first) return plainBed;
  const bags = /^(\d+) (?:grow ?)?(?:bags?|pots?|tubs?|barrels?|buckets?)$/i.exec(first.text);
  if (bags && Number(bags[1]) < 1)
    reading.problems.push(
      diagnostic("out-of-range", first.at, "No bags stand here", "Write how many"),
    );
  if (bags) return readBags(Number(bags[1]), rest, { name, reading });
  const house = /^(?:a |the )?(?:greenhouse|hoop ?house|tunnel|poly ?tunnel)$/i.test(first.text);
  const sized = house ? rest : pieces;
  const size = sized[0] ? readSize(sized[0], reading.problems) : null;
  for (const extra of sized.slice(1)) reading.problems.push(notOfABed(extra));
  return {
    kind: house ? "greenhouse" : "bed",
    lengthCm: size?.length ?? null,
    widthCm: size?.width ?? null,
    bags: null,
  };
}

function notOfABed(words: Words): Problem {
  return diagnostic(
    "unknown-word",
    words.at,
    `${words.text.slice(0, 60) || "Nothing"} is not understood of a bed`,
    "Write 12 x 4 ft, or 6 grow bags, 16 in across, 14 in high, or greenhouse, 8 x 6 ft",
  );
}

/** The longer side is the length, in whichever order they are written; rows run along it. */
function readSize(
  words: Words,
  problems: Problem[],
): { readonly length: Quantity; readonly width: Quantity } | null {
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

function readBags(
  count: number,
  rest: readonly Words[],
  { name, reading }: { readonly name: string; readonly reading: ReadLog },
): Made {
  let across: Quantity | null = null;
  let high: Quantity | null = null;
  for (const words of rest) {
    const found = /^(.*\S) +(across|wide|in diameter|high|deep|tall)$/i.exec(words.text);
    const length = found ? quantityFrom(found[1] ?? "") : null;
    if (!found) reading.problems.push(notOfABed(words));
    else if (length?.kind !== "length" || length.si <= 0)
      reading.problems.push(unclearQuantity(words, "a length", "16 in across, 14 in high"));
    else if (/across|wide|diameter/i.test(found[2] ?? "")) across = length;
    else high = length;
  }
  if (!across || !high)
    reading.filled.push({
      what: `bags of ${name}`,
      value: `${BAG.across} in across, ${BAG.high} in high`,
      why: "the plan does not say their size; house rule",
    });
  const bags = {
    count,
    across: across ?? quantity(BAG.across, "in"),
    high: high ?? quantity(BAG.high, "in"),
  };
  return { kind: "bags", lengthCm: null, widthCm: null, bags };
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
