import type { Observation } from "../../garden/diary/observation.ts";
import type { Task } from "../practices/task.ts";
import type { DoneTasks } from "./schedule-tasks.ts";

type DoneObservation = Extract<Observation, { readonly kind: "done" }>;

/** Practices that put a crop into soil; a diary's "sown" or "planted" means whichever of them the planting has. */
const STARTS = ["sow indoors", "sow outdoors", "plant", "repeat", "overwinter"];

function matchesTask(task: Task, observation: DoneObservation): boolean {
  if (observation.task !== undefined) return task.id === observation.task;
  if (task.subject.key !== observation.planting) return false;
  const starts =
    STARTS.includes(observation.practice) &&
    (observation.step === null || observation.step === "plant" || /^\d+$/.test(observation.step));
  if (task.sets?.act === "start")
    return (
      starts &&
      (observation.step === null ||
        !/^\d+$/.test(observation.step) ||
        Number(observation.step) === task.sets.sowing)
    );
  if (starts || task.practice !== observation.practice) return false;
  return (
    observation.step === null ||
    task.step === observation.step ||
    task.step.endsWith(`-${observation.step}`)
  );
}

/**
 * Which tasks the diary says are done, when and by whom. A line without a step is about the earliest due of the tasks
 * it fits that no earlier line has taken.
 */
export function doneTasksOf(
  tasks: readonly Task[],
  observations: readonly Observation[],
): DoneTasks {
  const done = new Map<
    string,
    { readonly day: DoneObservation["day"]; readonly by: string | null }
  >();
  const lines = observations
    .flatMap((observation) => (observation.kind === "done" ? [observation] : []))
    .sort((a, b) => a.day - b.day);
  if (lines.length === 0) return done;
  const byDue = [...tasks].sort((a, b) => a.window.due - b.window.due || (a.id < b.id ? -1 : 1));
  for (const observation of lines) {
    const task = byDue.find((each) => !done.has(each.id) && matchesTask(each, observation));
    if (task) done.set(task.id, { day: observation.day, by: observation.by });
  }
  return done;
}
