import { type Day, sayCount, sayDay } from "../../base/index.ts";

/** A task's day, and whether it is done, as a comparison of two schedules looks at it. */
export type TaskDay = { readonly day: Day; readonly done: unknown };

/** What happened to a task between two schedules: `done 9 May`, `new, 9 May` or `9 May, was 2 May (7 days later)`; null for nothing. */
export function changeText(was: TaskDay | undefined, is: TaskDay): string | null {
  const day = sayDay(is.day);
  if (is.done && !was?.done) return `done ${day}`;
  if (was === undefined) return `new, ${day}`;
  return was.day === is.day ? null : `${day}, was ${sayDay(was.day)} (${differenceText(was, is)})`;
}

function differenceText(was: TaskDay, is: TaskDay): string {
  return `${sayCount(Math.abs(is.day - was.day), "day")} ${is.day > was.day ? "later" : "sooner"}`;
}

/** The same of a task that is no more. */
export function goneText({ day }: Pick<TaskDay, "day">): string {
  return `no longer, was ${sayDay(day)}`;
}
