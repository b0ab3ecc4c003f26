import type { Day } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";

/** Which of the two sets an event is in; warnings, rungs and daily looks are in both. */
export type EventSet = "sessions" | "tasks" | "both";

/**
 * One entry of a calendar, made once for the garden; a feed only filters. Text is plain, lines ended by \n,
 * without the link, which is added from the feed's own address.
 */
export type Event = {
  /** What the UID is made of: a task id, `person/2027-05-08`, `person/2027-05-08/day` for work outside hours, or `person/open`. Unique within a set. */
  readonly key: string;
  readonly set: EventSet;
  readonly kind: "session" | "task" | "rung" | "daily" | "warning" | "open" | "away" | "season";
  /** Ids of its tasks, lead first; empty for the season's own line. */
  readonly tasks: readonly string[];
  /** Keys of people; empty: everybody. */
  readonly people: readonly string[];
  /** Keys of beds it touches, sorted. */
  readonly beds: readonly string[];
  readonly title: string;
  /** For the household. */
  readonly text: string;
  /** For a reader's link: no people, no absences, no place. Empty for sessions and open work, which no reader gets. */
  readonly readerText: string;
  /** Trade words for the calendar's own filter: practice names, sorted. */
  readonly categories: readonly string[];
  readonly when:
    | { readonly kind: "all day"; readonly day: Day }
    /** Instants in ms since 1970 UTC; from < to. */
    | { readonly kind: "timed"; readonly from: number; readonly to: number };
  /** Its day in the garden's own zone, whatever its hours. */
  readonly day: Day;
  /** Busy in the calendar: sessions, rungs and bringings in. */
  readonly busy: boolean;
  /** Minutes before the start (before midnight for all-day) that a reminder rings. */
  readonly remindMinutesBefore: number;
};

/** Minutes before midnight that an all-day event rings: six in the evening before. Source: house rule; the one portable hour. */
export const EVENING_BEFORE = 360;

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

/** An event of some tasks, in their order, lead first. */
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
    remindMinutesBefore: details.remindMinutesBefore,
  };
}

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
