import type { Fact } from "../../garden/diary/fact.ts";
import type { Task } from "../practices/task.ts";
import type { Done } from "./place.ts";

type DoneFact = Extract<Fact, { readonly kind: "done" }>;

/** Practices that put a crop into soil; a diary's "sown" or "planted" means whichever of them the planting has. */
const STARTS = ["sow indoors", "sow outdoors", "plant", "repeat", "overwinter"];

function means(task: Task, fact: DoneFact): boolean {
  if (fact.task !== undefined) return task.id === fact.task;
  if (task.subject.key !== fact.planting) return false;
  const starts =
    STARTS.includes(fact.practice) &&
    (fact.step === null || fact.step === "plant" || /^\d+$/.test(fact.step));
  if (task.sets?.act === "start")
    return (
      starts &&
      (fact.step === null || !/^\d+$/.test(fact.step) || Number(fact.step) === task.sets.sowing)
    );
  if (starts || task.practice !== fact.practice) return false;
  return fact.step === null || task.step === fact.step || task.step.endsWith(`-${fact.step}`);
}

/**
 * Which tasks the diary says are done, when and by whom. A line that names no step means the earliest due of
 * the tasks it could mean that no earlier line has taken.
 */
export function doneOf(tasks: readonly Task[], facts: readonly Fact[]): Done {
  const done = new Map<string, { readonly day: DoneFact["day"]; readonly by: string | null }>();
  const lines = facts
    .flatMap((fact) => (fact.kind === "done" ? [fact] : []))
    .sort((a, b) => a.day - b.day);
  if (lines.length === 0) return done;
  const byDue = [...tasks].sort((a, b) => a.window.due - b.window.due || (a.id < b.id ? -1 : 1));
  for (const fact of lines) {
    const task = byDue.find((each) => !done.has(each.id) && means(each, fact));
    if (task) done.set(task.id, { day: fact.day, by: fact.by });
  }
  return done;
}
