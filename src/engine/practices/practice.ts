import type { Day } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import type { Plan, PracticeWords } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { Anchors } from "../growth/anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import type { TaskOf } from "./task.ts";

/** The three passes: what starts a clock, what moves plants out, and the rest. */
export type Pass = "start" | "set out" | "rest";

/** The passes in the order they run; each knows the days placed by the one before. */
export const PASSES: readonly Pass[] = ["start", "set out", "rest"];

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

/** A practice's jobs: of one sowing in each pass, and those done once for a bed or the garden, after the last pass. */
export type PracticeTasks<Name extends string> = Readonly<
  Partial<Record<Pass, (context: SowingContext) => readonly TaskOf<Name>[]>> & {
    shared?: (garden: WholeGarden) => readonly TaskOf<Name>[];
  }
>;

/** The words on the buttons of a job's page. */
export type AnswerWords = {
  readonly done: string;
  readonly notYet: string;
  /** Where a look at it may show that the seed is up. */
  readonly up: string | null;
};

/** How a neighbour who knows nothing of gardening does a job. */
export type NeighbourHelp = "watering" | "boards" | "trays" | "frost" | "picking";

/** `thinned`, by step; `whole` for every step that has no words of its own. */
export type PastWords = { readonly whole: string } & Readonly<Record<string, string>>;

type JobKind = Pick<TaskOf, "step" | "rhythm" | "kinds">;

/** What becomes of a practice's jobs that fall into an absence. */
export type AwayRule = {
  /** What a neighbour may do, and how; null: nothing. */
  readonly neighbour: {
    readonly help: NeighbourHelp;
    readonly may: (job: JobKind) => boolean;
  } | null;
  /** `early`: done before they go, where it can be; `later`: it waits, whatever its window. Null: by its window. */
  readonly rather: "early" | "later" | null;
};

/** Something the trade does, under the trade's name for it, with all that the rest of the house has to know of it. */
export type Practice<Name extends string = string> = PracticeWords & {
  readonly name: Name;
  readonly answers: AnswerWords;
  /** What a planting, a bed or the garden is once the job is done, by step; `whole` for every other step. */
  readonly past: PastWords;
  /** What its things are found for, where they serve every crop in turn and are found once for the garden; else null. */
  readonly thingsFor: string | null;
  readonly away: AwayRule;
  readonly tasks: PracticeTasks<Name>;
};

type PracticeParts<Name extends string> = Pick<
  Practice<Name>,
  "name" | "words" | "deeds" | "tasks"
> &
  Partial<Pick<Practice<Name>, "begins" | "thingsFor" | "past">> & {
    readonly answers?: Partial<AnswerWords>;
    readonly away?: Partial<AwayRule>;
  };

/** A practice from what is particular to it; what most have alike is filled in. */
export function definePractice<const Name extends string>(
  parts: PracticeParts<Name>,
): Practice<Name> {
  return {
    begins: null,
    thingsFor: null,
    past: { whole: "done" },
    ...parts,
    answers: { done: "Done today", notYet: "Not yet", up: null, ...parts.answers },
    away: { neighbour: null, rather: null, ...parts.away },
  };
}
