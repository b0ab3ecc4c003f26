import type { Day } from "../../base/index.ts";
import type { PublishedState, ScheduledTask } from "../../engine/index.ts";

/** Tasks of one event. */
export type EventTaskGroup = readonly [ScheduledTask, ...ScheduledTask[]];

/** A task where calendars have it: what is done stays on the day, with the people and at the hour it was told. */
export function whereTold(scheduled: ScheduledTask): ScheduledTask {
  return scheduled.told ? { ...scheduled, ...scheduled.told } : scheduled;
}

/** Whether two tasks of one day are one event: the same practice and verb, for the same people. */
export function isAlikeTask(a: ScheduledTask, b: ScheduledTask): boolean {
  return (
    a.task.practice === b.task.practice &&
    a.task.title.verb === b.task.title.verb &&
    a.task.rhythm === b.task.rhythm &&
    a.at?.from === b.at?.from &&
    a.people.length === b.people.length &&
    a.people.every((person, i) => person === b.people[i])
  );
}

/**
 * Tasks in groups of one day each, in the order of their first tasks. A linear search, because days have few tasks and a
 * key for each would cost more.
 */
export function groupsAlike(
  scheduled: readonly ScheduledTask[],
  isAlike: (a: ScheduledTask, b: ScheduledTask) => boolean,
): readonly EventTaskGroup[] {
  const groups: [ScheduledTask, ...ScheduledTask[]][] = [];
  const byDay = new Map<Day, [ScheduledTask, ...ScheduledTask[]][]>();
  for (const each of scheduled) {
    const today = byDay.get(each.day) ?? [];
    const known = today.find(([first]) => isAlike(first, each));
    if (known) known.push(each);
    else {
      const group: [ScheduledTask, ...ScheduledTask[]] = [each];
      byDay.set(each.day, today);
      today.push(group);
      groups.push(group);
    }
  }
  return groups;
}

/** Some tasks by id. */
export function inIdOrder(group: readonly ScheduledTask[]): readonly ScheduledTask[] {
  if (group.length < 2) return group;
  return [...group].sort((a, b) => (a.task.id < b.task.id ? -1 : 1));
}

/** By id, but first the task that gives the event its UID: the smallest id of those that gave one before, else the smallest. */
export function leadFirst(
  group: readonly ScheduledTask[],
  publishedState: PublishedState,
): readonly ScheduledTask[] {
  if (group.length < 2) return group;
  const ordered = inIdOrder(group);
  const lead = ordered.find((each) => publishedState[each.task.id]?.lead) ?? ordered[0];
  return lead ? [lead, ...ordered.filter((each) => each !== lead)] : [];
}

/** Tasks, or other things, by a key of theirs, in the order of their first ones. */
export function groupsBy<Each, K>(
  all: readonly Each[],
  keyOf: (each: Each) => K,
): ReadonlyMap<K, readonly [Each, ...Each[]]> {
  const groups = new Map<K, [Each, ...Each[]]>();
  for (const each of all) {
    const key = keyOf(each);
    const known = groups.get(key);
    if (known) known.push(each);
    else groups.set(key, [each]);
  }
  return groups;
}
