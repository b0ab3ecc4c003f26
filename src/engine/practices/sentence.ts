import { cm, type Day, type Minute, type Quantity } from "../../base/index.ts";

/** A piece of a sentence; quantities, days and names get their words later, in the household's units. */
export type TextPiece =
  | string
  | { readonly quantity: Quantity; readonly upTo?: Quantity }
  | { readonly day: Day; readonly weekday?: true }
  | { readonly at: Minute }
  /** Key of a person. */
  | { readonly person: string };

/** Plain facts that say how a day came about, one sentence each, nearest first; for the household, and for `why` alone. */
export type ReasonLines = readonly (readonly TextPiece[])[];

/** Where a sentence stands in an event's text. */
export type SentencePart = "how" | "sign" | "why" | "caution";

/**
 * A sentence, written once, its full stop with it. `for` says who may read it: a reader's link gets what is
 * for all, and nothing that tells of absences, people, hours or places.
 */
export type Sentence = {
  readonly part: SentencePart;
  readonly for: "all" | "household";
  readonly pieces: readonly TextPiece[];
};

const forAll =
  (part: SentencePart) =>
  (...pieces: readonly TextPiece[]): Sentence => ({ part, for: "all", pieces });

/** How the job is done. */
export const how = forAll("how");

/** The plant's or the soil's own sign that it is time; told after "Right when:". */
export const sign = forAll("sign");

/** Why it is told for this day. */
export const why = forAll("why");

/** A caution, short, deferring to labels, local rules and those who are licensed. */
export const caution = forAll("caution");

/** The same sentence for the household alone. */
export function householdOnly(sentence: Sentence): Sentence {
  return { ...sentence, for: "household" };
}

/** A length from least to most [cm], or the one length where both are the same. */
export function lengthRange([least, most]: readonly [number, number]): TextPiece {
  const from = cm(least);
  return least === most ? { quantity: from } : { quantity: from, upTo: cm(most) };
}
