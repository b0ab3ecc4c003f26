import { type Day, earliest, latest } from "../../base/index.ts";
import type { Task } from "../practices/all.ts";
import type { Harm } from "../practices/task.ts";

/**
 * How near the due days of similar tasks must be to be done on one day, by harm [days]. Source: house rule; one trip to
 * the shed instead of three.
 */
const WITHIN_DAYS: Readonly<Record<Harm, number>> = {
  tonight: 0,
  "this week": 4,
  "when you can": 14,
};

/** Whether a task can wait a few days, has no fixed day and starts no clock: only such tasks are gathered. */
function canShareDay(task: Task): boolean {
  return (
    WITHIN_DAYS[task.harm] > 0 &&
    (task.rhythm === "session" || (task.rhythm === "daily" && task.harm === "when you can")) &&
    (task.sets === null || task.sets.act === "end") &&
    task.round === null &&
    task.together === null &&
    task.certainty === "expected"
  );
}

/** Similar tasks by rising due day, and the days that are in all their windows. */
type TaskBatch = { readonly jobs: Task[]; from: Day; to: Day };

/** The day nearest the middle of their due days that is in all their windows. */
function sharedDay({ jobs, from, to }: TaskBatch): Day {
  const middle = jobs[Math.floor((jobs.length - 1) / 2)]?.window.due ?? from;
  return earliest(to, latest(from, middle));
}

/**
 * The shared day for each task that can wait a little, by task id: one for those under the same net, then for those of
 * the same practice, verb and harm, whose due days are near and whose windows share a day; inside the windows of all of
 * them. Tasks without a similar one are left out.
 */
export function sharedDaysOf(tasks: readonly Task[]): ReadonlyMap<string, Day> {
  const days = new Map<string, Day>();
  const free = tasks.filter(canShareDay);
  assignSharedDays(free, days, ({ under, harm }) => (under === null ? null : `${under}|${harm}`));
  assignSharedDays(free, days, ({ practice, title, harm }) => `${practice}|${title.verb}|${harm}`);
  return days;
}

/** Gathers the tasks of one kind that have no day yet; nothing for kind null. */
function assignSharedDays(
  tasks: readonly Task[],
  days: Map<string, Day>,
  kindOf: (task: Task) => string | null,
): void {
  const kinds = new Map<string, Task[]>();
  for (const task of tasks) {
    const kind = days.has(task.id) ? null : kindOf(task);
    if (kind === null) continue;
    const known = kinds.get(kind);
    if (known) known.push(task);
    else kinds.set(kind, [task]);
  }
  for (const like of kinds.values())
    for (const batch of batchesOf(like)) {
      const day = batch.jobs.length > 1 ? sharedDay(batch) : null;
      if (day !== null) for (const task of batch.jobs) days.set(task.id, day);
    }
}

/** Similar tasks by due day, in groups that can share a day. */
function batchesOf(like: readonly Task[]): readonly TaskBatch[] {
  const all: TaskBatch[] = [];
  const byDue = [...like].sort((a, b) => a.window.due - b.window.due || (a.id < b.id ? -1 : 1));
  for (const task of byDue) {
    const open = all[all.length - 1];
    const { due, earliest: from, latest: to } = task.window;
    const first = open?.jobs[0];
    const near = first && due - first.window.due <= WITHIN_DAYS[task.harm];
    if (open && near && latest(open.from, from) <= earliest(open.to, to)) {
      open.jobs.push(task);
      open.from = latest(open.from, from);
      open.to = earliest(open.to, to);
    } else all.push({ jobs: [task], from, to });
  }
  return all;
}
