import type { Day } from "../../base/index.ts";
import type { Sentence, TextPiece } from "../practices/sentence.ts";
import { CALM_DAYS } from "./calm.ts";
import type { PublishedState, PublishedTask, ScheduledTask } from "./scheduled-task.ts";

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
  for (const { task, window, note, calledSince, ...scheduledTask } of scheduled) {
    const { id, say } = task;
    const { day, people } = scheduledTask.told ?? scheduledTask;
    const published = { day, window, people, days: daysNamed(say), lead: leads.has(id), note };
    state[id] = calledSince === undefined ? published : { ...published, calledSince };
  }
  return state;
}
