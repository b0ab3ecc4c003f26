import type { StoredLine } from "../store/diary.ts";
import { movedBy } from "../store/moved.ts";
import { type GardenView, todayIn } from "./garden-request.ts";
import type { MovedLines } from "./pages/job-row.tsx";

/** As long after an answer its page tells what moved [ms]. Source: house rule: till the next day's evening. */
const SHOWN_FOR_MS = 36 * 3_600_000;

/** Lines that a page has room for; the rest are counted. */
const MOST_LINES = 8;

/**
 * What the newest of the answers to an event's tasks has moved beside them, by the builds before and after it. Null where none
 * was given lately; `soon` where the build that knows it is still to come; empty where nothing else moves.
 */
export function changesFromAnswer(
  view: GardenView,
  tasks: readonly string[],
  newest: ReadonlyMap<string, StoredLine>,
): MovedLines {
  const { context } = view;
  const answer = newestOf([...newest.values()]);
  if (answer === null || context.now() - answer.saidAt > SHOWN_FOR_MS) return null;
  const moved = movedBy(context.sql, answer.id);
  if (moved === null) return "soon";
  const today = todayIn(view);
  const lines = moved
    .filter(({ id, day }) => day >= today && !tasks.includes(id))
    .map(({ text }) => text);
  const more = lines.length - MOST_LINES;
  return more > 0 ? [...lines.slice(0, MOST_LINES), `and ${more} more`] : lines;
}

function newestOf(lines: readonly StoredLine[]): StoredLine | null {
  return lines.toSorted((a, b) => b.id - a.id)[0] ?? null;
}
