import type { DiaryLine } from "../model/plan.ts";
import { type DiaryContext, note } from "./clause.ts";
import type { Observation } from "./observation.ts";
import { sayPlanting } from "./subjects.ts";

/** The practice of which each day's part is a whole. */
const PICKING = "harvest";

/**
 * What a fact says where it is so of some of the plants alone: a job stays open for the rest, what is lost in part grows
 * on, and a stage that some have reached is reached.
 */
export function partly(fact: Observation, line: DiaryLine, { plans }: DiaryContext): Observation {
  switch (fact.kind) {
    case "done": {
      const { day, planting, practice, step } = fact;
      if (practice === PICKING && step === null) return fact;
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
        `only some of ${planting ? sayPlanting(planting) : "it"} is ${what}, and the rest keeps its dates`,
      );
    }
    default:
      return fact;
  }
}
