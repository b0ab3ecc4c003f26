import { type Answer, isAnswer, type TaskCard, UNDO } from "../../app/records.ts";
import { sayDay } from "../../base/index.ts";
import { buildRecord } from "../store/build.ts";
import { addAnswer, diaryLines, type StoredLine, whyFull } from "../store/diary.ts";
import type { StoredGarden } from "../store/gardens.ts";
import { hasTask } from "../store/tasks.ts";
import { plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { type GardenContext, writeAndRebuild } from "./garden-context.ts";
import { type GardenRequest, todayIn } from "./garden-request.ts";

/** What a page offers to a task: its id, what was said of it already, and the answers that are left. */
export type Taps = {
  readonly task: string;
  readonly said: string | null;
  readonly taps: readonly Answer[];
};

/** The answers to one task that are left: of what is done, its undoing alone; null where nothing can be answered. */
export function tapsOf({ id, done, answers }: TaskCard): Taps | null {
  if (answers.length === 0) return null;
  if (!done) return { task: id, said: null, taps: answers };
  const by = done.by === null ? "" : `, ${done.by}`;
  const said = `Done ${sayDay(done.day)}${by}.`;
  return { task: id, said, taps: [{ words: "Undo", says: `${UNDO}done` }] };
}

/** For a job that is off the list since its newest answer left it this year, the way to have it back; null for any other. */
export function restoreTaps(newest: StoredLine | null): Taps | null {
  if (newest?.task == null || newest.text !== "left this year") return null;
  const taps = [{ words: "Undo", says: `${UNDO}left this year` }];
  return { task: newest.task, said: `Left this year, said ${sayDay(newest.day)}.`, taps };
}

/** The newest answer to each task that no build knows yet. */
export function answersSinceBuild({
  sql,
}: Pick<GardenContext, "sql">): ReadonlyMap<string, StoredLine> {
  const answers = new Map<string, StoredLine>();
  for (const line of diaryLines(sql, buildRecord(sql).line))
    if (line.task !== null && isAnswer(line.text)) answers.set(line.task, line);
  return answers;
}

/** A card with an answer that no build knows yet: what was done shows as done at once. */
export function withAnswer(
  card: TaskCard,
  answer: StoredLine | undefined,
  { plans }: StoredGarden,
): TaskCard {
  if (answer?.text === `${UNDO}done`) return { ...card, done: null };
  if (answer?.text !== "done") return card;
  const people = plans.toReversed().flatMap(({ summary }) => summary.people);
  const name = people.find(({ key }) => key === answer.person)?.name;
  return { ...card, done: { day: answer.day, by: name ?? answer.person } };
}

/** Bytes of a tap. */
const MOST_BYTES = 2000;

/** An id of a task or what is said of it, as long as they come. */
const MOST_LETTERS = 300;

/** Writes an answer down and leads back to the page it came from; what follows from it is built behind. The same answer twice is one. */
export async function answerTap(gardenRequest: GardenRequest): Promise<Response> {
  const { context, link, request } = gardenRequest;
  const said = answerIn(await formOf(request, MOST_BYTES));
  if (said === null || !hasTask(context.sql, said.task))
    return plain(400, "That was no answer to a job.\n");
  const full = whyFull(context.sql, link.person, context.now());
  if (full !== null) return plain(429, `${full}\n`);
  const by = { person: link.person, saidAt: context.now() };
  const line = { day: todayIn(gardenRequest), ...said, ...by };
  writeAndRebuild(context, () => addAnswer(context.sql, line), Boolean);
  return plain(303, "Written down.\n", { Location: new URL(request.url).pathname });
}

function answerIn(form: URLSearchParams | null): { task: string; text: string } | null {
  const [task, text] = [form?.get("task") ?? null, form?.get("say") ?? null];
  const good = task !== null && task.length <= MOST_LETTERS && text !== null && isAnswer(text);
  return good ? { task, text } : null;
}
