import type { Day } from "../../base/index.ts";
import type { Task } from "../practices/all.ts";
import type { Sentence, TextPiece } from "../practices/sentence.ts";
import type { PublishedState, PublishedTask, ScheduledTask } from "./scheduled-task.ts";

/**
 * A new day nearer than this to the published one does not move it. Source: house rule; nobody reads a feed whose dates
 * keep changing.
 */
export const CALM_DAYS = 3;

/** How far a due day must move to be published anew: to a later day, and to an earlier one [days]. */
export type Calm = { readonly later: number; readonly earlier: number };

const USUAL_CALM: Calm = { later: CALM_DAYS, earlier: CALM_DAYS };

/** The least and the most of it where the weather is known [days]. Source: house rule: a week gained, a fortnight ahead. */
const [LEAST_GAIN_DAYS, MOST_CALM_DAYS] = [7, 14];

/**
 * The same in a garden that knows its weather as of a day, where every forecast changes every day a little. What is far ahead need
 * not be known to the day yet: a quarter of the time there is. And what can go on as published is only brought forward where
 * that gains a week. Source: house rule.
 */
export function calmOf(due: Day, weatherAsOf: Day | null): Calm {
  if (weatherAsOf === null) return USUAL_CALM;
  const ahead = Math.min(Math.round((due - weatherAsOf) / 4), MOST_CALM_DAYS);
  return { later: Math.max(CALM_DAYS, ahead), earlier: Math.max(LEAST_GAIN_DAYS, ahead) };
}

/**
 * Whether what was published is still valid: the task's due day has moved by less than its calm, and the published day
 * is still inside the window, or no farther outside than a day far ahead may be. Other tasks and people's hours never move a
 * published day.
 */
export function isStillValid(
  published: PublishedTask,
  { window }: Task,
  weatherAsOf: Day | null,
): boolean {
  const calm = calmOf(window.due, weatherAsOf);
  const outside = calm.later - CALM_DAYS;
  const inside =
    published.day >= window.earliest - outside && published.day <= window.latest + outside;
  const later = window.due - published.window.due;
  return inside && later < calm.later && -later < calm.earlier;
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
  const near =
    now.length === published.length &&
    now.every((day, i) => Math.abs(day - (published[i] ?? 0)) < CALM_DAYS);
  if (!near || now.every((day, i) => day === published[i])) return say;
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

/** What is published of a schedule, by task; `leads` are the keys of its events. */
export function publishedStateOf(
  scheduled: readonly ScheduledTask[],
  leads: ReadonlySet<string>,
): PublishedState {
  const state: Record<string, PublishedTask> = {};
  for (const { task, day, window, people, note } of scheduled) {
    const { id, say } = task;
    state[id] = { day, window, people, days: daysNamed(say), lead: leads.has(id), note };
  }
  return state;
}
