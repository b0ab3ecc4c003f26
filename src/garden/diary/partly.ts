import type { DiaryLine } from "../model/plan.ts";
import { type DiaryContext, note } from "./clause.ts";
import type { Observation } from "./observation.ts";
import { sayPlanting } from "./subjects.ts";

/** The practice of which each day's part is a whole. */
export const PICKING = "harvest";

const ONLY_SOME = "only some of";

/** Whether a note is of plants that were lost in part. */
export const isOfPart = ({ why }: Extract<Observation, { readonly kind: "note" }>): boolean =>
  why?.startsWith(ONLY_SOME) ?? false;

/**
 * What a fact says where it is so of some of the plants alone: a job stays open for the rest, what is lost in part grows
 * on, and a stage that some have reached is reached.
 */
export function partly(fact: Observation, line: DiaryLine, { plans }: DiaryContext): Observation {
  switch (fact.kind) {
    case "done": {
      const { day, planting, practice, step } = fact;
      if (practice === PICKING) return { ...fact, step: null };
      return { kind: "not yet", day, planting, of: { practice, step }, sowing: null, partly: true };
    }
    case "failed":
    case "lost":
    case "moved": {
      const planting = plans
        .flatMap(({ plantings }) => plantings)
        .find(({ key }) => key === fact.planting);
      const what = fact.kind === "moved" ? "moved" : "lost";
      return note(
        line,
        `${ONLY_SOME} ${planting ? sayPlanting(planting) : "it"} is ${what}, and the rest keeps its dates`,
      );
    }
    default:
      return fact;
  }
}
