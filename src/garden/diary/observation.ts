import type { Day, Quantity } from "../../base/index.ts";

/** A stage that a gardener can see. */
export type ObservedStage = "up" | "flower" | "first ripe";

/**
 * What was not to be seen or not to be done: a stage, or the next step of a practice. `anything`: the stage that is
 * expected next, of `no peas yet`.
 */
export type NotYet =
  | { readonly stage: ObservedStage | "anything" }
  | { readonly practice: string; readonly step: string | null; readonly task?: string };

/** Facts that are deeds, which a later line can take back. */
export type ActObservation = Extract<
  Observation,
  { readonly kind: "done" | "seen" | "failed" | "lost" | "left" | "moved" | "bought" }
>;

/**
 * What a diary line was understood to say. A line that is not understood, or that fits two plantings or
 * none, stays a note with the reason; nothing is dropped.
 */
export type Observation =
  | {
      readonly kind: "done";
      readonly day: Day;
      readonly planting: string;
      readonly practice: string;
      /** The step where the line names one; null: the earliest step not yet done by then. */
      readonly step: string | null;
      readonly by: string | null;
      /** Id of the very task, where the line answered it. */
      readonly task?: string;
    }
  | {
      readonly kind: "seen";
      readonly day: Day;
      readonly planting: string;
      readonly stage: ObservedStage;
      readonly sowing: number | null;
    }
  | {
      /** Looked for and not there, or looked at and not to be done yet. */
      readonly kind: "not yet";
      readonly day: Day;
      readonly planting: string;
      readonly of: NotYet;
      readonly sowing: number | null;
      /** Some of it was done, and the job stays open for the rest. */
      readonly partly?: true;
      /** The day to which the gardener put it off, where the line says one. */
      readonly until?: Day;
    }
  | {
      /** A job that the gardener leaves out this year. */
      readonly kind: "left";
      readonly day: Day;
      readonly planting: string;
      readonly practice: string;
      /** Id of the very task that is left, where the line answered it; else all of that practice. */
      readonly task?: string;
      readonly text: string;
    }
  | {
      /** `failed`: nothing came of it, and it is begun again; `lost`: what stood there is gone. */
      readonly kind: "failed" | "lost";
      readonly day: Day;
      readonly planting: string;
      readonly sowing: number | null;
      readonly text: string;
    }
  | {
      readonly kind: "moved";
      readonly day: Day;
      readonly planting: string;
      /** Key of the bed it stands in from then on. */
      readonly bed: string;
      readonly text: string;
    }
  | {
      /** Its plants were bought, so that nothing of it is raised from then on. */
      readonly kind: "bought";
      readonly day: Day;
      readonly planting: string;
      readonly text: string;
    }
  | {
      readonly kind: "measured";
      readonly day: Day;
      readonly what: "soil";
      readonly bed: string | null;
      readonly value: Quantity;
    }
  | {
      readonly kind: "measured";
      readonly day: Day;
      /** A night's low, or the rain of a day. */
      readonly what: "low" | "rain";
      readonly bed: null;
      readonly value: Quantity;
      /** Of how many days up to this one, where it is of more than this one [days]. */
      readonly days?: number;
    }
  | {
      readonly kind: "measured";
      readonly day: Day;
      readonly what: "height";
      readonly bed: null;
      readonly planting: string;
      readonly value: Quantity;
    }
  | {
      /** What an earlier line said is taken back: the newest before it that said the same. */
      readonly kind: "undone";
      readonly day: Day;
      readonly what: ActObservation;
      readonly text: string;
    }
  | {
      readonly kind: "note";
      readonly day: Day;
      readonly text: string;
      readonly why: string | null;
    };
