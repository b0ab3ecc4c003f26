import type { Day } from "../days/day.ts";
import type { Quantity } from "../quantities/quantity.ts";

/** A piece of a sentence that the household's units and language of days are put into later. */
export type Piece =
  | string
  | { readonly quantity: Quantity; readonly upTo?: Quantity }
  | { readonly day: Day }
  | { readonly days: readonly [Day, Day] }
  | { readonly person: string };

/**
 * A sentence, written once. `for` says who may read it: a reader's link gets what is for all and nothing that
 * tells of absences, people or hours. `part` says what it is in the event's text.
 */
export type Sentence = {
  readonly part: "how" | "sign" | "why" | "last day" | "caution";
  readonly for: "all" | "household";
  readonly pieces: readonly Piece[];
};
