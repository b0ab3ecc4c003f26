import type { TaskOutline, Year } from "../../app/index.ts";

/** A task on its day, as the year has it. */
export type TaskOnDay = Year["scheduled"][number];

/** What an outline leaves out of a task: its sentences, its reasons, and how it was scheduled. */
export type TaskDetails = Omit<TaskOnDay, keyof TaskOutline> & {
  readonly task: Omit<TaskOnDay["task"], keyof TaskOutline["task"]>;
};

/** The half of a task that a look back over many tasks reads; it is a third of the whole. */
export function outlineOf({ task, day, window, usual, done }: TaskOnDay): TaskOutline {
  const { id, subject, bed, practice, step, rhythm, title, sets } = task;
  return {
    task: { id, subject, bed, practice, step, rhythm, title, sets },
    day,
    window,
    usual,
    done,
  };
}

/** The other half. */
export function detailsOf({
  task,
  day,
  window,
  usual,
  done,
  ...scheduled
}: TaskOnDay): TaskDetails {
  const { id, subject, bed, practice, step, rhythm, title, sets, ...rest } = task;
  return { ...scheduled, task: rest };
}

/** The task that two halves are of. */
export function joinHalves(outline: TaskOutline, details: TaskDetails): TaskOnDay {
  return { ...outline, ...details, task: { ...outline.task, ...details.task } };
}
