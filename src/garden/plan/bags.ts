import { cm, type Quantity, quantity, quantityFrom, sayQuantity } from "../../base/index.ts";
import type { Bed } from "../model/plan.ts";
import { notOfABed } from "./bed-words.ts";
import { type ReadLog, unclearQuantity } from "./place.ts";
import type { Words } from "./tree.ts";

/** The size assumed for a bag whose size is not given [in]. Source: house rule: a 12 gallon grow bag. */
const BAG = { across: 16, high: 14 } as const;

type BagSize = {
  readonly across: Quantity | null;
  readonly high: Quantity | null;
  readonly holds: Quantity | null;
};

/** Bags by their number; `each` is what stands behind it in the same part, such as `of 10 gal`. */
export type BagWords = {
  readonly count: number;
  readonly each: string;
  readonly rest: readonly Words[];
  readonly first: Words;
};

/**
 * So many bags, by their measures or by what one holds; what is not said is filled in and listed under the bed's name.
 * Problems: `unknown-word`, `quantity-unclear`.
 */
export function readBags(
  words: BagWords,
  name: string,
  reading: ReadLog,
): NonNullable<Bed["bags"]> {
  const said = sizeSaid(words, reading);
  const across = said.across ?? acrossOf(said);
  const high = said.high ?? highOf({ ...said, across });
  if (!said.across || !said.high) reading.filled.push(filledIn(said, { across, high, name }));
  return { count: words.count, across, high };
}

function sizeSaid({ each, first, rest }: BagWords, reading: ReadLog): BagSize {
  let size: BagSize = { across: null, high: null, holds: null };
  const parts = [...(each === "" ? [] : [{ text: each, words: first }]), ...rest.map(asPart)];
  for (const { text, words } of parts) size = { ...size, ...partSaid(text, words, reading) };
  return size;
}

const asPart = (words: Words) => ({ text: words.text, words });

function partSaid(text: string, words: Words, { problems }: ReadLog): Partial<BagSize> {
  const found = /^(.*\S) +(across|wide|in diameter|high|deep|tall)$/i.exec(text);
  const amount = quantityFrom(found?.[1] ?? text.replace(/^of | each$|^each /gi, ""));
  if (!found && amount?.kind === "volume" && amount.si > 0) return { holds: amount };
  if (!found) problems.push(notOfABed(words));
  else if (amount?.kind !== "length" || amount.si <= 0)
    problems.push(unclearQuantity(words, "a length", "16 in across, 14 in high"));
  else return /across|wide|diameter/i.test(found[2] ?? "") ? { across: amount } : { high: amount };
  return {};
}

/** How wide it is: by what it holds and how high it is, else as wide for its height as the usual bag. */
function acrossOf({ holds, high }: BagSize): Quantity {
  if (holds && high) return cm(Math.sqrt((4000 * holds.si) / (Math.PI * high.si)));
  if (holds) return cm(Math.cbrt((4000 * holds.si * BAG.across) / (Math.PI * BAG.high)));
  return quantity(BAG.across, "in");
}

function highOf({ holds, across }: BagSize): Quantity {
  if (holds && across) return cm((4000 * holds.si) / (Math.PI * across.si ** 2));
  return quantity(BAG.high, "in");
}

type FilledBag = { readonly across: Quantity; readonly high: Quantity; readonly name: string };

function filledIn({ holds }: BagSize, { across, high, name }: FilledBag) {
  const metric = holds?.said?.unit === "L";
  const say = (length: Quantity) => sayQuantity(length, metric ? "metric" : "us");
  return {
    what: `bags of ${name}`,
    value: `${say(across)} across, ${say(high)} high`,
    why: holds
      ? "from what one holds; house rule: shaped like a 12 gallon grow bag"
      : "the plan does not say their size; house rule",
  };
}
