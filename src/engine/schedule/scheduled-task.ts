import type { Day } from "../../base/days/day.ts";
import type { Minute } from "../../base/days/instants.ts";
import type { Sentence } from "../practices/sentence.ts";
import type { Task, Window } from "../practices/task.ts";

/** A task on its day. */
export type ScheduledTask = {
  readonly task: Task;
  readonly day: Day;
  /** The window as it is told, which calm may keep from an earlier telling. */
  readonly window: Window;
  /** Keys of the people it falls to, sorted; empty: everybody, or nobody is named. */
  readonly people: readonly string[];
  /** Minutes of the day a timed task starts and ends; null for the rest. */
  readonly at: { readonly from: Minute; readonly to: Minute } | null;
  /** Due day of the same task here in a mean year, without diary and absences; null where that year has none such. */
  readonly usual: Day | null;
  /** The day the same job of the year before was done, by the diary; null where that does not say. */
  readonly lastYear: Day | null;
  /** Done on that day, by whom where the diary says (key of a person). */
  readonly done: { readonly day: Day; readonly by: string | null } | null;
  /** What placing has to say: whom it had to work round, or that it would not fit. */
  readonly note: Sentence | null;
};

/** What a task was last told as. `lead`: it gave an event of several its UID. */
export type PublishedTask = {
  readonly day: Day;
  readonly window: Window;
  readonly people: readonly string[];
  /** Every day its sentences named, in order. */
  readonly days: readonly Day[];
  readonly lead: boolean;
  readonly note: Sentence | null;
};

/** What each task (by id) was last told as, kept in the garden's record so that dates do not tremble. */
export type PublishedState = Readonly<Record<string, PublishedTask>>;
