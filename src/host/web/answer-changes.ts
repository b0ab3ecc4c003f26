import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import { parseDiaryLines } from "../../garden/diary/parse.ts";
import { changesOf } from "../../views/events/changes.ts";
import type { StoredLine } from "../store/diary.ts";
import { gardenIn, type StoredGarden } from "../store/gardens.ts";
import { buildScheduleNow, type Now, todayIn } from "./garden-request.ts";
import type { MovedLines } from "./pages/job.tsx";

/** As long after an answer its page tells what moved [ms]. Source: house rule: till the next day's evening. */
const TOLD_FOR_MS = 36 * 3_600_000;

/** Lines that a page has room for; the rest are counted. */
const MOST_LINES = 8;

/**
 * What the newest answer to one of an event's tasks has moved beside them: the garden told with that answer (`now`) and without it.
 * Null where none was given lately; empty where nothing else moves. Found anew each time, so that the page may be looked at
 * again, gone back to, or opened by somebody else.
 */
export function changesFromAnswer(
  { context, stored }: Now,
  tasks: readonly string[],
  now: readonly ScheduledTask[],
): MovedLines {
  const last = stored.lines.findLast(({ task }) => task !== null && tasks.includes(task));
  if (last === undefined || context.now() - last.saidAt > TOLD_FOR_MS) return null;
  const before = buildScheduleNow({ context, stored: without(stored, last) }).scheduled;
  const { plans } = gardenIn(stored);
  const said = parseDiaryLines(plans).filter(({ line }) => line.at.line === last.id);
  const since = todayIn({ context, stored });
  const lines = changesOf({ before, now, diaryLines: said, since }, plans)
    .filter(({ id }) => !tasks.includes(id))
    .map((change) => change.text);
  const more = lines.length - MOST_LINES;
  return more > 0 ? [...lines.slice(0, MOST_LINES), `and ${more} more`] : lines;
}

function without(stored: StoredGarden, line: StoredLine): StoredGarden {
  return { ...stored, lines: stored.lines.filter(({ id }) => id !== line.id) };
}
