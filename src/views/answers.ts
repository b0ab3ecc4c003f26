import type { Task } from "../engine/practices/task.ts";
import type { TaskAnswer } from "../garden/diary/answers.ts";

/** One answer that a page offers to a task: the words on it, and what is written down. */
export type Answer = { readonly words: string; readonly says: string };

/** How a gardener says that a job is done, and that it is not yet time. */
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

const answer = (says: TaskAnswer, words: string): Answer => ({ words, says });

/** The answers to an open task: done, not yet, left this year, and under a board that green shows; none to a warning. */
export function answersTo({
  practice,
  rhythm,
  sets,
}: Pick<Task, "practice" | "rhythm" | "sets">): readonly Answer[] {
  if (rhythm === "warning") return [];
  const [yes, notYet] = WORDS[practice] ?? ["Done today", "Not yet"];
  const green = practice === "board" ? [answer("up", "I see green")] : [];
  const leave = sets === null ? [answer("left this year", "Leave it this year")] : [];
  return [...green, answer("done", yes), answer("not yet", notYet), ...leave];
}
