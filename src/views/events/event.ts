import type { Day } from "../../base/index.ts";

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
  /** Minutes before the start (before midnight for all-day) that a reminder rings; null where nothing is left to do. */
  readonly remindMinutesBefore: number | null;
  /** What overlooking it would cost, its worst task's harm; with it the reminders of a day are chosen. */
  readonly weight: number;
};

/** Minutes before midnight that an all-day event rings: six in the evening before. Source: house rule; the one portable hour. */
export const EVENING_BEFORE = 360;
