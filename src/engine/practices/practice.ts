import type { Day } from "../../base/days/day.ts";
import type { Observation } from "../../garden/diary/observation.ts";
import type { Plan } from "../../garden/model/plan.ts";
import type { Climate } from "../climate/climate.ts";
import type { Anchors } from "../growth/anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import type { Task } from "./task.ts";

/** The three passes: what starts a clock, what moves plants out, and the rest. */
export type Pass = "start" | "set out" | "rest";

/** The passes in the order they run; each knows the days placed by the one before. */
export const PASSES: readonly Pass[] = ["start", "set out", "rest"];

/** Something the trade does to a planting, under the trade's name for it; no tasks where a crop has no need of it. */
export type Practice = {
  readonly name: string;
  readonly pass: Pass;
  readonly tasks: (context: SowingContext) => readonly Task[];
};

/**
 * All that grows in a plan's year, for what is done bed by bed or once for the garden. `contexts` are those of the last
 * pass, in the plan's order; `anchors` hold what that pass placed as well, as the days on which crops end.
 */
export type WholeGarden = {
  readonly plan: Plan;
  readonly climate: Climate;
  readonly contexts: readonly SowingContext[];
  readonly anchors: Anchors;
  /** What the diary says of the whole garden, in day order. */
  readonly observations: readonly Observation[];
  readonly around: (day: Day) => boolean;
};

/** Something done once for a bed or the garden, in the last pass. */
export type SharedPractice = {
  readonly name: string;
  readonly tasks: (garden: WholeGarden) => readonly Task[];
};
