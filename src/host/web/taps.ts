import { isAnswer, type TaskCard, UNDO } from "../../app/records.ts";
import { sayDay } from "../../base/index.ts";
import { buildRecord } from "../store/build.ts";
import { addAnswer, diaryLines, type StoredLine, whyFull } from "../store/diary.ts";
import type { StoredGarden } from "../store/gardens.ts";
import { hasTask } from "../store/tasks.ts";
import { plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { type GardenContext, writeAndRebuild } from "./garden-context.ts";
import { type GardenRequest, todayIn } from "./garden-request.ts";
import type { TapsOffered } from "./pages/job-row.tsx";

/** The answers to some open tasks at once, as the first of them words them; null where nothing can be answered. Not empty. */
export function tapsOf(cards: readonly TaskCard[]): TapsOffered | null {
  const answers = cards[0]?.answers ?? [];
  if (answers.length === 0) return null;
  return {
    tasks: cards.map(({ id }) => id),
    done: answers.find(({ says }) => says === "done") ?? null,
    others: answers.filter(({ says }) => says !== "done"),
  };
}

/** The way to take an answer to some tasks back. */
export function undoTaps(tasks: readonly string[], said: string): TapsOffered {
  return { tasks, done: { words: "Undo", says: `${UNDO}${said}` }, others: [] };
}

/** What was said of a task, in a sentence, by whom (name; null where that is not known). */
export function saidOf(said: string, { day, by }: NonNullable<TaskCard["done"]>): string {
  const who = by === null ? "" : `, ${by}`;
  const words = Object.hasOwn(SAID, said) ? SAID[said] : said;
  return `${words}${said === "done" ? "" : ","} ${sayDay(day)}${who}.`;
}

const SAID: Readonly<Record<string, string>> = {
  done: "Done",
  "not yet": "Not yet",
  "left this year": "Left this year",
  up: "Seen that it is up",
};

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
  stored: StoredGarden,
): TaskCard {
  if (answer?.text === `${UNDO}done`) return { ...card, done: null, text: undoneText(card) };
  if (answer?.text !== "done") return card;
  return { ...card, done: { day: answer.day, by: nameOf(answer.person, stored) } };
}

/** A card's text without its first line where that says that it is done. */
function undoneText({ done, text }: TaskCard): string {
  return done === null ? text : text.split("\n").slice(1).join("\n");
}

/** What a person is called in the newest plan that names them; their key where none does; null for nobody. */
export function nameOf(person: string | null, { plans }: Pick<StoredGarden, "plans">) {
  const people = plans.toReversed().flatMap(({ summary }) => summary.people);
  return people.find(({ key }) => key === person)?.name ?? person;
}

/** Bytes of a tap: of one that answers as many tasks as are told in one event. */
const MOST_BYTES = 16_000;

/** An id of a task or what is said of it, as long as they come; and as many tasks as one tap answers. */
const [MOST_LETTERS, MOST_TASKS] = [300, 40];

/** Where on a page a task stands, for an answer to lead back to: its id as a name that an address can have. */
export function placeOf(task: string): string {
  return `job-${task.replaceAll(/[^\w-]+/g, "-")}`;
}

/** Writes an answer to one or several tasks down and leads back to where it was tapped: the path `back`, at the first task's place. What follows from it is built behind. The same answer twice is one. */
export async function answerTap(gardenRequest: GardenRequest, back: string): Promise<Response> {
  const { context, link, request } = gardenRequest;
  const said = answerIn(await formOf(request, MOST_BYTES));
  const [first] = said?.tasks ?? [];
  if (said === null || first === undefined || !said.tasks.every((id) => hasTask(context.sql, id)))
    return plain(400, "That was no answer to a job.\n");
  const full = whyFull(context.sql, link.person, context.now());
  if (full !== null) return plain(429, `${full}\n`);
  const by = { person: link.person, saidAt: context.now() };
  const line = { day: todayIn(gardenRequest), text: said.text, ...by };
  const add = (task: string) => addAnswer(context.sql, { ...line, task });
  writeAndRebuild(context, () => said.tasks.map(add).some(Boolean), Boolean);
  return plain(303, "Written down.\n", { Location: `${back}#${placeOf(first)}` });
}

function answerIn(form: URLSearchParams | null) {
  const [tasks, text] = [form?.getAll("task") ?? [], form?.get("say") ?? null];
  const good = tasks.length > 0 && tasks.length <= MOST_TASKS && text !== null && isAnswer(text);
  return good && tasks.every((task) => task.length <= MOST_LETTERS) ? { tasks, text } : null;
}
