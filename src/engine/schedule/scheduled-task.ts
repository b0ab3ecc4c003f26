import type { Day, Minute } from "../../base/index.ts";
import type { Task } from "../practices/all.ts";
import type { Sentence } from "../practices/sentence.ts";
import type { Window } from "../practices/task.ts";

/** A task on its day. */
export type ScheduledTask = {
  readonly task: Task;
  readonly day: Day;
  /** The published window, which may still be that of an earlier build. */
  readonly window: Window;
  /** Keys of the people who do it, sorted; empty: everybody, or nobody is named. */
  readonly people: readonly string[];
  /** Minutes of the day a timed task starts and ends; null for the rest. */
  readonly at: { readonly from: Minute; readonly to: Minute } | null;
  /**
   * Due day of the same task here in a mean year, without diary and absences; null where that year does not have it.
   */
  readonly usual: Day | null;
  /** The day the same task of the year before was done, by the diary; null where that does not say. */
  readonly lastYear: Day | null;
  /** Done on that day, by whom where the diary says (key of a person). */
  readonly done: { readonly day: Day; readonly by: string | null } | null;
  /** Where a calendar had it before it was done, and has it still; null for what is open. */
  readonly told: Pick<ScheduledTask, "day" | "people" | "at"> | null;
  /** Notes of scheduling: an absence it had to avoid, or that it does not fit. */
  readonly note: Sentence | null;
  /** The first day on which this year's weather called for another day than this; left out: it does not. */
  readonly calledSince?: Day;
};

/** What a look back over many tasks reads of each: neither its sentences nor its reasons. */
export type TaskOutline = Pick<ScheduledTask, "day" | "window" | "usual" | "done"> & {
  readonly task: Pick<
    Task,
    "id" | "subject" | "bed" | "practice" | "step" | "rhythm" | "title" | "sets"
  >;
};

/** How a task was last published. `lead`: it gave an event of several tasks its UID. */
export type PublishedTask = {
  readonly day: Day;
  readonly window: Window;
  readonly people: readonly string[];
  /** Every day its sentences named, in order. */
  readonly days: readonly Day[];
  readonly lead: boolean;
  readonly note: Sentence | null;
  /** As in ScheduledTask. */
  readonly calledSince?: Day;
};

/** How each task (by id) was last published, stored with the garden so that dates stay calm. */
export type PublishedState = Readonly<Record<string, PublishedTask>>;
