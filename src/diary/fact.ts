import type { Day } from "../days/day.ts";
import type { Quantity } from "../quantities/quantity.ts";

/** A stage that a gardener can see. */
export type Stage = "up" | "flower" | "first ripe";

/**
 * What a diary line was understood to say. A line that is not understood, or that fits two plantings or
 * none, stays a note with the reason; nothing is dropped.
 */
export type Fact =
  | {
      readonly kind: "done";
      readonly day: Day;
      readonly planting: string;
      readonly practice: string;
      /** The step where the line names one; null: the earliest step not yet done by then. */
      readonly step: string | null;
      readonly by: string | null;
    }
  | {
      readonly kind: "seen";
      readonly day: Day;
      readonly planting: string;
      readonly stage: Stage;
      readonly sowing: number | null;
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
      readonly what: "low";
      readonly bed: null;
      readonly value: Quantity;
    }
  | {
      readonly kind: "note";
      readonly day: Day;
      readonly text: string;
      readonly why: string | null;
    };
