import { capital } from "../../base/index.ts";
import type { TaskOutline } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bedName } from "../events/titles.ts";

/** `Beets, Root bed`, or the crop alone: one of several similar jobs. */
export function sheetPlaceText({ task }: TaskOutline, plan: Plan): string {
  const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
  return capital(bed === "" ? task.title.object : `${task.title.object}, ${bed}`);
}
