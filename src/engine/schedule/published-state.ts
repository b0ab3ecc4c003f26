import { type Day, earliest, plus } from "../../base/index.ts";
import type { Task } from "../practices/all.ts";
import type { Sentence, TextPiece } from "../practices/sentence.ts";
import type { Window } from "../practices/task.ts";
import type { PublishedState, PublishedTask, ScheduledTask } from "./scheduled-task.ts";

/**
 * A new day nearer than this to the published one does not move it. Source: house rule; nobody reads a feed whose dates
 * keep changing.
 */
export const CALM_DAYS = 3;

/**
 * Whether what was published is still valid: the task's due day has moved by less than CALM_DAYS, and the published day
 * is still inside the window. Other tasks and people's hours never move a published day. In a garden that knows its weather as of
 * a day, see isCalm.
 */
export function isStillValid(
  published: PublishedTask,
  { window }: Task,
  weatherAsOf: Day | null,
): boolean {
  if (weatherAsOf !== null) return isCalm(published, window, weatherAsOf);
  const inside = published.day >= window.earliest && published.day <= window.latest;
  return inside && Math.abs(window.due - published.window.due) < CALM_DAYS;
}

/** What a day must gain to be brought forward, and the most that a day far ahead may be off [days]. Source: house rule. */
const [LEAST_GAIN_DAYS, MOST_OFF_DAYS] = [10, 14];

/**
 * Whether a published day may stay though every forecast moves the due day a little. What is far ahead may be off by a quarter of
 * the time there is, a fortnight at most. What is near stays while it is inside its window, and is brought forward only where
 * that gains ten days. Source: house rule.
 */
function isCalm({ day }: PublishedTask, window: Window, weatherAsOf: Day): boolean {
  const ahead = Math.min(Math.round((window.due - weatherAsOf) / 4), MOST_OFF_DAYS);
  const off = Math.max(CALM_DAYS, ahead) - CALM_DAYS;
  const inside = day >= window.earliest - off && day <= window.latest + off;
  return inside && day - window.due < Math.max(LEAST_GAIN_DAYS, ahead);
}

/** How much later than it must be a job is put off that this year's weather has put off before [days]. Source: house rule. */
const ONCE_FOR_ALL_DAYS = 4;

/**
 * A window in which a job is put off that was published and has to wait for the weather: a few days later than it must, so that a cold
 * spring does not put it off again every other day. Unchanged where it was not published, or comes no later.
 */
export function putOffWindow(
  published: PublishedTask | undefined,
  window: Window,
  weatherAsOf: Day | null,
): Window {
  if (weatherAsOf === null || published === undefined || published.day >= window.due) return window;
  const due = earliest(plus(window.due, ONCE_FOR_ALL_DAYS), window.latest);
  return { ...window, due };
}

/** Every day that sentences name, in order. */
export function daysNamed(say: readonly Sentence[]): readonly Day[] {
  let days: Day[] | null = null;
  for (const { pieces } of say)
    for (const piece of pieces)
      if (isDay(piece)) {
        days ??= [];
        days.push(piece.day);
      }
  return days ?? NO_DAYS;
}

/** The shared empty list, because most sentences name no day. */
const NO_DAYS: readonly Day[] = [];

function isDay(piece: TextPiece): piece is { readonly day: Day; readonly weekday?: true } {
  return typeof piece === "object" && "day" in piece;
}

/**
 * The sentences with the days that were published last, where each has moved by less than CALM_DAYS; with their own
 * days where one has moved farther or the number of days is different.
 */
export function withPublishedDays(
  say: readonly Sentence[],
  published: readonly Day[],
): readonly Sentence[] {
  const now = daysNamed(say);
  if (now.length !== published.length) return say;
  let moved = 0;
  for (const [i, day] of now.entries())
    moved = Math.max(moved, Math.abs(day - (published[i] ?? 0)));
  if (moved === 0 || moved >= CALM_DAYS) return say;
  let next = 0;
  return say.map((sentence) => ({
    ...sentence,
    pieces: sentence.pieces.map((piece) => {
      if (!isDay(piece)) return piece;
      const day = published[next] ?? piece.day;
      next += 1;
      return { ...piece, day };
    }),
  }));
}

/** What is published of a schedule, by task, done ones where they were told; `leads` are the keys of its events. */
export function publishedStateOf(
  scheduled: readonly ScheduledTask[],
  leads: ReadonlySet<string>,
): PublishedState {
  const state: Record<string, PublishedTask> = {};
  for (const { task, window, note, ...scheduledTask } of scheduled) {
    const { id, say } = task;
    const { day, people } = scheduledTask.told ?? scheduledTask;
    state[id] = { day, window, people, days: daysNamed(say), lead: leads.has(id), note };
  }
  return state;
}
