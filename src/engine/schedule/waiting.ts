import { HARM_WEIGHT } from "./schedule-tasks.ts";
import type { ScheduledTask } from "./scheduled-task.ts";

/** Tasks that start a plant's clock go before those that only tend it. */
const isStart = ({ task: { sets } }: ScheduledTask) =>
  sets?.act === "start" || sets?.act === "set out";

/** Most harm first, then sowing and setting out, then what can wait least, then by id. */
function byImportance(a: ScheduledTask, b: ScheduledTask): number {
  return (
    HARM_WEIGHT[b.task.harm] - HARM_WEIGHT[a.task.harm] ||
    Number(isStart(b)) - Number(isStart(a)) ||
    a.window.latest - b.window.latest ||
    (a.task.id < b.task.id ? -1 : 1)
  );
}

/**
 * The tasks of a person's day that do not fit into their hours [minutes], least harm last; none where all fit. Tasks
 * are taken in the order of their harm, each as a whole, and the first always.
 */
export function tasksThatMustWait(
  jobs: readonly ScheduledTask[],
  minutes: number,
): readonly ScheduledTask[] {
  let left = minutes;
  return [...jobs].sort(byImportance).filter(({ task }, i) => {
    if (i > 0 && task.minutes > left) return true;
    left -= task.minutes;
    return false;
  });
}
