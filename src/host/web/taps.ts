import { sayDay } from "../../base/days/day.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import { isAnswer, UNDO } from "../../garden/diary/answers.ts";
import { type Answer, answersTo } from "../../views/answers.ts";
import { addAnswer, type StoredLine } from "../store/diary.ts";
import { plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { buildScheduleNow, type GardenRequest, todayIn } from "./garden-request.ts";

/** What a page offers to a task: its id, what was said of it already, and the answers that are left. */
export type Taps = {
  readonly task: string;
  readonly said: string | null;
  readonly taps: readonly Answer[];
};

/** The answers to one task; of what is done, its undoing alone. */
export function tapsOf({ task, done }: ScheduledTask, nameOf: (person: string) => string): Taps {
  if (!done) return { task: task.id, said: null, taps: answersTo(task) };
  const by = done.by === null ? "" : `, ${nameOf(done.by)}`;
  const said = `Done ${sayDay(done.day)}${by}.`;
  return { task: task.id, said, taps: [{ words: "Undo", says: `${UNDO}done` }] };
}

/** For a job that is off the list since somebody left it this year, the way to have it back; null for any other. */
export function restoreTaps(lines: readonly StoredLine[], task: string): Taps | null {
  const last = lines.findLast((line) => line.task === task);
  if (last?.text !== "left this year") return null;
  const taps = [{ words: "Undo", says: `${UNDO}left this year` }];
  return { task, said: `Left this year, said ${sayDay(last.day)}.`, taps };
}

/** Bytes of a tap. */
const MOST_BYTES = 2000;

/** An id of a task or what is said of it, as long as they come. */
const MOST_LETTERS = 300;

/** Writes an answer down and leads back to the page it came from. The same answer twice is one. */
export async function answerTap(gardenRequest: GardenRequest): Promise<Response> {
  const { context, link, request } = gardenRequest;
  const said = answerIn(await formOf(request, MOST_BYTES));
  if (said === null || !isJob(gardenRequest, said.task))
    return plain(400, "That was no answer to a job.\n");
  await addAnswer(context.db, link.garden, {
    day: todayIn(gardenRequest),
    ...said,
    person: link.person,
    saidAt: context.now(),
  });
  return plain(303, "Written down.\n", { Location: new URL(request.url).pathname });
}

/** Whether a task is one of the garden's: told last, told before as a phone may still show it, answered before, or told now. */
function isJob(gardenRequest: GardenRequest, task: string): boolean {
  const { stored } = gardenRequest;
  if (Object.hasOwn(stored.standing, task)) return true;
  if (stored.lines.some((line) => line.task === task)) return true;
  if (Object.values(stored.before).some(({ tasks }) => tasks.includes(task))) return true;
  return buildScheduleNow(gardenRequest).scheduled.some((scheduled) => scheduled.task.id === task);
}

function answerIn(form: URLSearchParams | null): { task: string; text: string } | null {
  const [task, text] = [form?.get("task") ?? null, form?.get("say") ?? null];
  const good = task !== null && task.length <= MOST_LETTERS && text !== null && isAnswer(text);
  return good ? { task, text } : null;
}
