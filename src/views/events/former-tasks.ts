import { MS_PER_DAY } from "../../base/index.ts";
import type { Event } from "./event.ts";

/**
 * The tasks that events had before they changed or were removed, by event key: ids of tasks, and when that ended [ms
 * since 1970 UTC].
 */
export type FormerTasks = Readonly<
  Record<string, { readonly tasks: readonly string[]; readonly at: number }>
>;

/** How long a phone may show what it last fetched [ms]. Source: house rule: two weeks out of reach. */
const FORMER_TASKS_MS = 14 * MS_PER_DAY;

/**
 * The former tasks after a new build: every task that an event had and no longer has, so that a phone which still shows
 * the old event finds its tasks. Those that ended two weeks ago are dropped.
 */
export function updateFormerTasks(
  former: FormerTasks,
  { was, is, now }: { was: readonly Event[]; is: readonly Event[]; now: number },
): FormerTasks {
  const tasksNow = new Map(is.map(({ key, tasks }) => [key, tasks]));
  const recent = Object.entries(former).filter(([, { at }]) => now - at < FORMER_TASKS_MS);
  const known = new Map(recent);
  for (const { key, tasks } of was) {
    const lost = tasks.filter((task) => !tasksNow.get(key)?.includes(task));
    if (lost.length === 0) continue;
    const all = new Set([...(known.get(key)?.tasks ?? []), ...lost]);
    known.set(key, { tasks: [...all], at: now });
  }
  return Object.fromEntries(known);
}
