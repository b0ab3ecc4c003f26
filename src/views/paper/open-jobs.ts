import type { DaySpan } from "../../base/index.ts";
import { planOfTask, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import type { Event } from "../events/event.ts";
import { lastDayText } from "../events/texts.ts";
import { wholeTitle } from "../events/titles.ts";

/** What was told, and whose sheet it is. */
type OpenJobsInput = {
  readonly plans: readonly Plan[];
  readonly scheduled: readonly ScheduledTask[];
  readonly events: readonly Event[];
  readonly person: string | null;
};

/**
 * Work of earlier months that the feed of the same day shows as still open within these days, both inclusive: a line
 * each, with the last day that does no harm where that is not over. Empty where nothing is open.
 */
export function openJobLines(
  { plans, scheduled, events, person }: OpenJobsInput,
  { from, to }: DaySpan,
): readonly string[] {
  const open = events.filter(
    ({ kind, day, people }) =>
      kind === "open" && day >= from && day <= to && (person === null || people.includes(person)),
  );
  return open.flatMap(({ day, tasks }) =>
    scheduled
      .filter((each) => tasks.includes(each.task.id) && each.day < from)
      .map((each) => {
        const till = each.window.latest >= day ? lastDayText({ ...each, day }) : "";
        return `${wholeTitle([each], planOfTask(each.task.id, plans))}.${till === "" ? "" : ` ${till}`}`;
      }),
  );
}
