import type { ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import type { EventTaskGroup } from "./grouping.ts";
import type { Voice } from "./sentences.ts";
import { asManyAsFit, doneText, LONGEST_TEXT, shorten, textOfAll } from "./texts.ts";
import { titleOf, wholeTitle } from "./titles.ts";

/** What stands before the name of what is done. */
export const DONE_MARK = "✓ ";

/** Those of some tasks that are still open. */
export const openOnes = <Each extends ScheduledTask>(tasks: readonly Each[]): readonly Each[] =>
  tasks.filter(({ done }) => done === null);

/** `✓ Thin beets, Root bed. Done 9 May, Oda.`, a line for those that were done alike. */
export function doneLines(
  tasks: readonly ScheduledTask[],
  plan: Plan,
  voice: Voice,
): readonly string[] {
  const alike = new Map<string, EventTaskGroup>();
  for (const each of tasks.filter(({ done }) => done)) {
    const key = `${each.task.title.verb}|${each.task.title.where}|${doneText(each, voice)}`;
    const known = alike.get(key);
    alike.set(key, known ? [...known, each] : [each]);
  }
  return [...alike.values()].map(
    (group) => `${DONE_MARK}${wholeTitle(group, plan)}. ${doneText(group[0], voice)}`,
  );
}

/** The title of similar tasks: of those that are open, or of all with the mark where none is. Not empty. */
export function titleWithDone(group: readonly ScheduledTask[], plan: Plan): string {
  const open = openOnes(group);
  return open.length > 0 ? titleOf(open, plan) : titleOf(group, plan, DONE_MARK);
}

/** Characters that what is done may take in an event that has open work too. Source: house rule. */
const LONGEST_DONE = 150;

/** The text of similar tasks: how to do those that are open, then which are done. Not empty. */
export function textWithDone(group: readonly ScheduledTask[], plan: Plan, voice: Voice): string {
  const open = openOnes(group);
  if (open.length === 0 || open.length === group.length) return textOfAll(group, plan, voice);
  const done = asManyAsFit(doneLines(group, plan, voice), LONGEST_DONE).join("\n");
  const room = LONGEST_TEXT - done.length - 1;
  return `${shorten(textOfAll(open, plan, voice).split("\n"), room)}\n${done}`;
}
