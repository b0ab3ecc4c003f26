import { capital, list } from "../../engine/practices/say.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { bedName } from "../events/titles.ts";

/**
 * Like jobs in one line with all their names, since paper has room that a lock screen has not: `Thin beets and carrots,
 * Root bed; lettuce, Salad bed`. Beds in the order they first stand. `placed` not empty.
 */
export function wholeTitle(placed: readonly Placed[], plan: Plan): string {
  const first = placed[0];
  if (!first) throw new RangeError("a title needs a task");
  const { verb, where } = first.task.title;
  const said = [...byBed(placed, plan)].map(([bed, objects]) =>
    bed === "" ? list([...objects]) : `${list([...objects])}, ${bed}`,
  );
  const end = where === null || where === "bed" ? "" : ` ${where}`;
  return `${verb} ${said.join("; ")}${end}`.trim();
}

function byBed(placed: readonly Placed[], plan: Plan): Map<string, Set<string>> {
  const beds = new Map<string, Set<string>>();
  for (const { task } of placed) {
    const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
    beds.set(bed, (beds.get(bed) ?? new Set()).add(task.title.object));
  }
  return beds;
}

/** `Beets, Root bed`, or the crop alone: one of several like jobs. */
export function placeTold({ task }: Placed, plan: Plan): string {
  const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
  return capital(bed === "" ? task.title.object : `${task.title.object}, ${bed}`);
}
