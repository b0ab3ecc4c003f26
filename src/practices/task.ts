import type { Day } from "../days/day.ts";
import type { Minute } from "../days/instants.ts";
import type { Sentence } from "./say.ts";

/** What a task is about. `key` is the planting's, bed's or the garden's own key (`2027/beet`, `2027/bed/root-bed`, `2027/garden`). */
export type Subject =
  | { readonly kind: "planting"; readonly key: string }
  | { readonly kind: "bed"; readonly key: string }
  | { readonly kind: "garden"; readonly key: string };

/** What is lost when a task is late: the row tonight, the crop this week, or little. */
export type Harm = "tonight" | "this week" | "when you can";

/**
 * `session`: wants somebody's gardening hours. `daily`: anybody at home that day.
 * `timed`: a carrying out or a bringing in at an hour; wants somebody home then.
 * `warning`: told on its day, nobody's work.
 */
export type Rhythm = "session" | "daily" | "timed" | "warning";

/** What a day was reckoned from; a task carries those of everything it hangs on. */
export type Ground =
  | "last frost"
  | "first frost"
  | "soil"
  | "warmth"
  | "age"
  | "given"
  | "seen"
  | "season";

/** earliest ≤ due ≤ latest; `latest` is the last day that does no harm. `better` is the side that hurts less. */
export type Window = {
  readonly earliest: Day;
  readonly due: Day;
  readonly latest: Day;
  readonly better: "earlier" | "later";
};

/** The acts that start a clock, and the stages seen. */
export type Act = "start" | "set out" | "up" | "first ripe" | "done";

export type Task = {
  /** `2027/beet/thin/1`: subject key, practice, step. Stable under every edit of other plantings. */
  readonly id: string;
  readonly subject: Subject;
  /** Key of the bed it stands in, or null. */
  readonly bed: string | null;
  readonly crop: string | null;
  readonly practice: string;
  readonly step: string;
  readonly window: Window;
  readonly harm: Harm;
  readonly rhythm: Rhythm;
  readonly minutes: number;
  /** Local hours for a timed task before anyone is chosen; null else. */
  readonly hours: { readonly lasts: Minute; readonly part: "out" | "in" } | null;
  /** Verb phrase and the thing it is done to, joined when like tasks merge: `Thin`, `beets`. */
  readonly title: { readonly verb: string; readonly object: string };
  readonly say: readonly Sentence[];
  /** The chain as `why` tells it, one plain sentence a link, nearest first. */
  readonly because: readonly Sentence[];
  readonly grounds: readonly Ground[];
  /** Things to take along. */
  readonly needs: readonly string[];
  /** Tasks of equal `together` are placed on one day. */
  readonly together: string | null;
  /** Ids that must not come later than this one. */
  readonly after: readonly string[];
  /** The act whose anchor this task's day becomes, with its sowing; null for the rest. */
  readonly starts: { readonly act: "start" | "set out"; readonly sowing: number } | null;
  /** `fixed`: the gardener gave the day; `done`: the diary says so; else reckoned. */
  readonly certainty: "done" | "fixed" | "expected";
  /** Whose it must be (key of a person), or null. */
  readonly whose: string | null;
};
