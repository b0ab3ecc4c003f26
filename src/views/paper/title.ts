import { capital, joinWords, verbWith } from "../../base/index.ts";
import type { TaskOutline } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bedName } from "../events/titles.ts";

/**
 * Similar tasks in one line with all their names, because paper has more room than a lock screen: `Thin beets and
 * carrots, Root bed; lettuce, Salad bed`. Beds in the order of their first task. Not empty.
 */
export function wholeTitle(scheduled: readonly TaskOutline[], plan: Plan): string {
  const first = scheduled[0];
  if (!first) throw new RangeError("a title needs a task");
  const { verb, where } = first.task.title;
  const parts = [...byBed(scheduled, plan)].map(([bed, objects]) =>
    bed === "" ? joinWords([...objects]) : `${joinWords([...objects])}, ${bed}`,
  );
  const end = where === null || where === "bed" ? "" : ` ${where}`;
  return `${verbWith(verb, parts.join("; "))}${end}`.trim();
}

function byBed(scheduled: readonly TaskOutline[], plan: Plan): Map<string, Set<string>> {
  const beds = new Map<string, Set<string>>();
  for (const { task } of scheduled) {
    const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
    beds.set(bed, (beds.get(bed) ?? new Set()).add(task.title.object));
  }
  return beds;
}

/** `Beets, Root bed`, or the crop alone: one of several similar jobs. */
export function sheetPlaceText({ task }: TaskOutline, plan: Plan): string {
  const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
  return capital(bed === "" ? task.title.object : `${task.title.object}, ${bed}`);
}
