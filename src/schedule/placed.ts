import type { Day } from "../days/day.ts";
import type { Minute } from "../days/instants.ts";
import type { Sentence } from "../practices/say.ts";
import type { Task } from "../practices/task.ts";

/** A task on its day. */
export type Placed = {
  readonly task: Task;
  readonly day: Day;
  /** Keys of the people it falls to; empty where the plan names nobody. */
  readonly people: readonly string[];
  /** Minutes of the day a timed task starts and ends; null for the rest. */
  readonly at: { readonly from: Minute; readonly to: Minute } | null;
  /** The same task's day on this site in a mean year, without diary and absences; null where that year has no such task. */
  readonly usual: Day | null;
  /** Done on that day, by whom where the diary says. */
  readonly done: { readonly day: Day; readonly by: string | null } | null;
  /** What placing has to say: why not on its due day, or that it would not fit. */
  readonly note: Sentence | null;
};

/** What each task was last told as, kept in the garden's record so that dates do not tremble. Keys are task ids. */
export type Standing = Readonly<Record<string, Told>>;

/** Day, window and reason last told. */
export type Told = {
  readonly day: Day;
  readonly earliest: Day;
  readonly due: Day;
  readonly latest: Day;
  readonly people: readonly string[];
};
