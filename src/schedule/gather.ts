import { type Day, earliest, latest } from "../days/day.ts";
import type { Task } from "../practices/task.ts";

/** Like jobs whose due days lie within so many days of each other are looked for on one. Source: house rule; one trip to the shed instead of three. */
const WITHIN_DAYS = 10;

/** What can wait, has no day of its own and begins nothing: only such jobs are drawn together. */
function mayBeDrawn(task: Task): boolean {
  return (
    task.harm === "when you can" &&
    task.rhythm === "session" &&
    (task.sets === null || task.sets.act === "end") &&
    task.round === null &&
    task.together === null &&
    task.certainty === "expected"
  );
}

/** Jobs not empty, due day rising. The day nearest the middle of their due days that is in all their windows; null where there is none. */
function sharedDay(jobs: readonly Task[]): Day | null {
  const from = latest(...jobs.map(({ window }) => window.earliest));
  const to = earliest(...jobs.map(({ window }) => window.latest));
  const middle = jobs[Math.floor((jobs.length - 1) / 2)]?.window.due ?? from;
  return from > to ? null : earliest(to, latest(from, middle));
}

/**
 * The tasks with one due day for like jobs that can wait: those of the same practice and verb whose due days lie
 * near each other and whose windows share a day. Each stays inside its own window. The order is kept.
 */
export function gathered(tasks: readonly Task[]): readonly Task[] {
  const kinds = new Map<string, Task[]>();
  for (const task of tasks) {
    if (!mayBeDrawn(task)) continue;
    const kind = `${task.practice}|${task.title.verb}`;
    const known = kinds.get(kind);
    if (known) known.push(task);
    else kinds.set(kind, [task]);
  }
  const due = new Map<string, Day>();
  for (const like of kinds.values())
    for (const visit of visits(like)) {
      const day = visit.length > 1 ? sharedDay(visit) : null;
      if (day !== null) for (const task of visit) due.set(task.id, day);
    }
  return tasks.map((task) => {
    const day = due.get(task.id);
    return day === undefined || day === task.window.due
      ? task
      : { ...task, window: { ...task.window, due: day } };
  });
}

/** Like jobs by due day, those that can share a day together. */
function visits(like: readonly Task[]): readonly (readonly Task[])[] {
  const all: Task[][] = [];
  const byDue = [...like].sort((a, b) => a.window.due - b.window.due || (a.id < b.id ? -1 : 1));
  for (const task of byDue) {
    const open = all[all.length - 1];
    const first = open?.[0];
    const near = first && task.window.due - first.window.due <= WITHIN_DAYS;
    if (open && near && sharedDay([...open, task]) !== null) open.push(task);
    else all.push([task]);
  }
  return all;
}
