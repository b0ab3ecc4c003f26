import { sayDay } from "../days/day.ts";
import { dayAt } from "../days/instants.ts";
import { type Answer, isAnswer, UNDO } from "../diary/answers.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import type { Placed } from "../schedule/placed.ts";
import { addAnswer, type StoredLine } from "../store/diary.ts";
import { openGarden, zoneOf } from "../store/gardens.ts";
import { notFound, plain } from "./answers.ts";
import { bodyOf } from "./body.ts";
import type { Shell } from "./shell.ts";

/** One answer that a page offers to a task: the words on it, and what is written down. */
export type Tap = { readonly words: string; readonly says: string };

/** What a page offers to a task: its id, what was said of it already, and the answers that are left. */
export type Taps = {
  readonly task: string;
  readonly said: string | null;
  readonly taps: readonly Tap[];
};

/** How one says that a job is done, and that it is not yet time, in the words of the job. */
const WORDS: Readonly<Record<string, readonly [string, string]>> = {
  "sow indoors": ["Sown today", "Not yet"],
  "sow outdoors": ["Sown today", "Too cold or wet yet"],
  "winter-sow": ["Sown today", "Not yet"],
  repeat: ["Sown today", "Not yet"],
  plant: ["Planted today", "Too cold or wet yet"],
  "set out": ["Out today", "Too cold yet"],
  thin: ["Thinned today", "Not tall enough yet"],
  weed: ["Weeded today", "Not yet"],
  hill: ["Hilled today", "Not tall enough yet"],
  harvest: ["Picked today", "Not ripe yet"],
  water: ["Watered", "Not yet"],
  "things to have": ["Got it", "Not yet"],
};

const tap = (says: Answer, words: string): Tap => ({ words, says });

/** The answers to one task: done, not yet, left this year, and under a board that green shows; of what is done, its undoing alone. */
export function tapsOf({ task, done }: Placed, nameOf: (person: string) => string): Taps {
  const [yes, notYet] = WORDS[task.practice] ?? ["Done today", "Not yet"];
  if (done) {
    const by = done.by === null ? "" : `, ${nameOf(done.by)}`;
    const said = `Done ${sayDay(done.day)}${by}.`;
    return { task: task.id, said, taps: [{ words: "Undo", says: `${UNDO}done` }] };
  }
  const green = task.practice === "board" ? [tap("up", "I see green")] : [];
  const leave = task.sets === null ? [tap("left this year", "Leave it this year")] : [];
  const taps = [...green, tap("done", yes), tap("not yet", notYet), ...leave];
  return { task: task.id, said: null, taps };
}

/** For a job that is off the list since somebody left it this year, the way to have it back; null for any other. */
export function leftTaps(lines: readonly StoredLine[], task: string): Taps | null {
  const last = lines.findLast((line) => line.task === task);
  if (last?.text !== "left this year") return null;
  const taps = [{ words: "Undo", says: `${UNDO}left this year` }];
  return { task, said: `Left this year, said ${sayDay(last.day)}.`, taps };
}

/** Bytes of a tap. */
const MOST_BYTES = 2000;

/** An id of a task or what is said of it, as long as they come. */
const MOST_LETTERS = 300;

/**
 * Writes an answer down and leads back to the page it came from. Only from a page of ours: a request that says it comes from
 * elsewhere is refused, and nothing is written. The same answer twice is one.
 */
export async function answerTap(shell: Shell, link: Link, request: Request): Promise<Response> {
  if (!isFromHere(request)) return plain(403, "Not from there.\n");
  const said = await answerIn(request);
  if (said === null) return plain(400, "That was no answer to a job.\n");
  const opened = await openGarden(shell.db, link.garden);
  if (opened === null || opened.revoked.includes(writeSegment(link))) return notFound();
  const now = shell.now();
  await addAnswer(shell.db, link.garden, {
    day: dayAt(now, zoneOf(opened.stored)),
    ...said,
    person: link.person,
    saidAt: now,
  });
  return plain(303, "Written down.\n", { Location: new URL(request.url).pathname });
}

/**
 * Whether nothing tells that it comes from another site. Who sends it knows the link, which no other site does; pages here send
 * no referrer, so that older browsers tell no origin either.
 */
function isFromHere(request: Request): boolean {
  const site = request.headers.get("sec-fetch-site");
  if (site !== null) return site === "same-origin";
  const origin = request.headers.get("origin");
  return origin === null || origin === "null" || origin === new URL(request.url).origin;
}

async function answerIn(request: Request): Promise<{ task: string; text: string } | null> {
  const type = request.headers.get("content-type") ?? "";
  if (!type.startsWith("application/x-www-form-urlencoded")) return null;
  const body = await bodyOf(request, MOST_BYTES);
  if (body === null) return null;
  const form = new URLSearchParams(body);
  const [task, text] = [form.get("task"), form.get("say")];
  const good = task !== null && task.length <= MOST_LETTERS && text !== null && isAnswer(text);
  return good ? { task, text } : null;
}
