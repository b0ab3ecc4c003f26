import { HARM_WEIGHT, type ScheduledTask } from "../../engine/index.ts";
import { openOnes } from "./done.ts";
import type { Event } from "./event.ts";

/** What overlooking an event of no tasks costs, and a warning: more than any work. Source: house rule. */
const KIND_WEIGHTS: Partial<Record<Event["kind"], number>> = {
  warning: 10 * HARM_WEIGHT.tonight,
  away: HARM_WEIGHT["this week"],
  season: 0,
};

/** The parts of an event that do not follow from its tasks. */
export type EventDetails = Pick<
  Event,
  | "key"
  | "set"
  | "kind"
  | "when"
  | "day"
  | "busy"
  | "remindMinutesBefore"
  | "title"
  | "text"
  | "readerText"
>;

/** An event of some tasks, in their order, lead first; one of tasks that are all done rings no more. */
export function eventFor(group: readonly ScheduledTask[], details: EventDetails): Event {
  const { tasks, people, beds, categories } = detailsFromTasks(group);
  return {
    key: details.key,
    set: details.set,
    kind: details.kind,
    tasks,
    people: people.sort(),
    beds: beds.sort(),
    title: details.title,
    text: details.text,
    readerText: details.readerText,
    categories: categories.sort(),
    when: details.when,
    day: details.day,
    busy: details.busy,
    remindMinutesBefore:
      group.length > 0 && openOnes(group).length === 0 ? null : details.remindMinutesBefore,
    weight: KIND_WEIGHTS[details.kind] ?? weightOf(group),
  };
}

/** The harm of the worst of its tasks that is still open; nothing where none is. */
const weightOf = (group: readonly ScheduledTask[]) =>
  Math.max(0, ...openOnes(group).map(({ task }) => HARM_WEIGHT[task.harm]));

/** Ids of tasks in their order; people, beds and practices, each once. */
function detailsFromTasks(group: readonly ScheduledTask[]) {
  const tasks: string[] = [];
  const people: string[] = [];
  const beds: string[] = [];
  const categories: string[] = [];
  for (const { task, people: theirs } of group) {
    tasks.push(task.id);
    for (const person of theirs) addOnce(people, person);
    if (task.bed !== null) addOnce(beds, task.bed);
    addOnce(categories, task.practice);
  }
  return { tasks, people, beds, categories };
}

function addOnce(texts: string[], text: string): void {
  if (!texts.includes(text)) texts.push(text);
}
