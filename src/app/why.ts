import { sayDay } from "../base/index.ts";
import { planOfTask, type ScheduledTask, type Year } from "../engine/index.ts";
import { sayPieces, titleOf, voiceOf } from "../views/index.ts";

/**
 * Why a task is on its day, a line each: its own reasons, then those of each task it depends on, each once. Null where
 * no task of the year has that id or ends with it.
 */
export function whyLines(year: Year, id: string): readonly string[] | null {
  const found =
    year.scheduled.find(({ task }) => task.id === id) ??
    year.scheduled.find(({ task }) => task.id.endsWith(`/${id}`));
  return found ? chainOf(found, year, new Set()) : null;
}

function chainOf(each: ScheduledTask, year: Year, seen: Set<string>): readonly string[] {
  seen.add(each.task.id);
  const behind = year.scheduled.filter(
    ({ task }) => each.task.hangsOn.includes(task.id) && !seen.has(task.id),
  );
  return [...ownLines(each, year), ...behind.flatMap((next) => chainOf(next, year, seen))];
}

function ownLines(each: ScheduledTask, { plans }: Year): readonly string[] {
  const { task, window, usual, note, day } = each;
  const plan = planOfTask(task.id, plans);
  const voice = voiceOf(plan, "household");
  const { earliest, due, latest } = window;
  const mean = usual !== null && usual !== due ? `; in a usual year ${sayDay(usual)}` : "";
  return [
    `${titleOf([each], plan)}: ${sayDay(day, true)}  ${task.id}`,
    `  Between ${sayDay(earliest)} and ${sayDay(latest)}, best ${sayDay(due)}${mean}.`,
    ...task.because.map((pieces) => `  ${sayPieces(pieces, voice)}`),
    ...(note ? [`  ${sayPieces(note.pieces, voice)}`] : []),
  ];
}
