import type { ScheduledTask, TaskOutline } from "./scheduled-task.ts";

/** Scheduled tasks by the key of their subject, in their order. */
export function tasksBySubject<Scheduled extends TaskOutline>(
  scheduled: readonly Scheduled[],
): ReadonlyMap<string, readonly Scheduled[]> {
  const tasks = new Map<string, Scheduled[]>();
  for (const each of scheduled) {
    const known = tasks.get(each.task.subject.key);
    if (known) known.push(each);
    else tasks.set(each.task.subject.key, [each]);
  }
  return tasks;
}

const byIdCache = new WeakMap<readonly ScheduledTask[], ReadonlyMap<string, ScheduledTask>>();

/** Scheduled tasks by id, cached by their list, because each absence looks some of them up. */
export function tasksById(scheduled: readonly ScheduledTask[]): ReadonlyMap<string, ScheduledTask> {
  const known = byIdCache.get(scheduled);
  if (known) return known;
  const tasks = new Map(scheduled.map((each) => [each.task.id, each]));
  byIdCache.set(scheduled, tasks);
  return tasks;
}

/** The harvests of a sowing among a planting's tasks, in their order. */
export function picksOf<Scheduled extends TaskOutline>(
  tasks: readonly Scheduled[],
  sowing: number,
): readonly Scheduled[] {
  const step = sowing === 1 ? /^(?!sowing-)/ : new RegExp(`^sowing-${sowing}-`);
  return tasks.filter(({ task }) => task.practice === "harvest" && step.test(task.step));
}
