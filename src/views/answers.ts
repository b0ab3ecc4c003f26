import { practiceOf, type Task } from "../engine/index.ts";
import type { TaskAnswer } from "../garden/model/index.ts";

/** One answer that a page offers to a task: the words on it, and what is written down. */
export type Answer = { readonly words: string; readonly says: string };

const answer = (says: TaskAnswer, words: string): Answer => ({ words, says });

/** The answers to an open task: done, not yet, left this year, and where a look may show it that the seed is up; none to a warning. */
export function answersTo({
  practice,
  rhythm,
  sets,
}: Pick<Task, "practice" | "rhythm" | "sets">): readonly Answer[] {
  if (rhythm === "warning") return [];
  const words = practiceOf(practice).answers;
  const up = words.up === null ? [] : [answer("up", words.up)];
  const leave = sets === null ? [answer("left this year", "Leave it this year")] : [];
  return [...up, answer("done", words.done), answer("not yet", words.notYet), ...leave];
}
