import { beginsOf, type Observation } from "../../garden/index.ts";
import { PRACTICES, type Task } from "../practices/all.ts";
import type { DoneTasks } from "./schedule-tasks.ts";

type DoneObservation = Extract<Observation, { readonly kind: "done" }>;

function matchesTask(task: Task, observation: DoneObservation): boolean {
  if (observation.task !== undefined) return task.id === observation.task;
  if (task.subject.key !== observation.planting) return false;
  // A diary's "sown" or "planted" means whichever start the planting has.
  const starts = beginsOf(observation, PRACTICES) !== null;
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

/** Days before its earliest by which work on a bed or the garden may be done. Source: house rule; before that the line means no task. */
const EARLY_DAYS = 14;

/**
 * The task that a line means among those it could mean, which stand in order of their due days: of a planting the first, of
 * a bed or the garden, whose jobs come round, the one due nearest to its day.
 */
function meant(
  byDue: readonly Task[],
  { day, task }: DoneObservation,
  couldBe: (task: Task) => boolean,
): Task | undefined {
  const first = byDue.find(couldBe);
  if (!first || first.subject.kind === "planting" || task !== undefined) return first;
  const far = ({ window }: Task) => Math.abs(window.due - day);
  const [near] = byDue
    .filter((each) => couldBe(each) && each.window.earliest <= day + EARLY_DAYS)
    .sort((a, b) => far(a) - far(b));
  return near;
}

/**
 * Which tasks the diary says are done, when and by whom. A line that names no step means one of the tasks it
 * could mean that no earlier line has taken.
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
    const open = (said: DoneObservation) =>
      meant(byDue, said, (each) => !done.has(each.id) && matchesTask(each, said));
    // What is cut once has no last cut of its own.
    const task =
      open(observation) ??
      (observation.step === "last" ? open({ ...observation, step: null }) : undefined);
    if (task) done.set(task.id, { day: observation.day, by: observation.by });
  }
  return done;
}
