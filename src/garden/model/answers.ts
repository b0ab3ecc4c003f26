/** What can be answered to a task: `up` is a stage seen, the rest is of the task itself. */
export const ANSWERS = ["done", "not yet", "left this year", "up"] as const;

/** One of ANSWERS. */
export type TaskAnswer = (typeof ANSWERS)[number];

/** How an answer is taken back: the answer's own words behind these. */
export const UNDO = "undo: ";

/** Whether a text is an answer, or takes one back. */
export function isAnswer(text: string): boolean {
  const said = text.startsWith(UNDO) ? text.slice(UNDO.length) : text;
  return ANSWERS.some((answer) => answer === said);
}
