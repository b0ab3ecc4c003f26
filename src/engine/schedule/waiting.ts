import { HARM_WEIGHT } from "./schedule-tasks.ts";
import type { ScheduledTask } from "./scheduled-task.ts";

/** What sets the plants' own clock goes before what only tends them. */
const isStart = ({ task: { sets } }: ScheduledTask) =>
  sets?.act === "start" || sets?.act === "set out";

/** Most to lose first: by harm, then sowing and setting out, then what can wait least, then by id. */
function byImportance(a: ScheduledTask, b: ScheduledTask): number {
  return (
    HARM_WEIGHT[b.task.harm] - HARM_WEIGHT[a.task.harm] ||
    Number(isStart(b)) - Number(isStart(a)) ||
    a.window.latest - b.window.latest ||
    (a.task.id < b.task.id ? -1 : 1)
  );
}

/**
 * Of a day's jobs for one person those that their hours [minutes] do not hold, least to lose last; none where all fit. What
 * is kept is taken in the order of what would be lost, each job whole, and the first always.
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
