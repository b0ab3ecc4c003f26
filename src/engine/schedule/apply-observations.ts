import { type Day, latest, plus } from "../../base/index.ts";
import { beginsOf, type NotYet, type Observation } from "../../garden/index.ts";
import { type Anchors, anchorKey, LAST_SOWING_NUMBER } from "../growth/anchors.ts";
import { couldBeLost } from "../growth/diary-anchors.ts";
import { LOOK_AGAIN_DAYS } from "../growth/postponed.ts";
import { PRACTICES, type Task } from "../practices/all.ts";
import { type Sentence, why } from "../practices/sentence.ts";
import { SETTING_OUT } from "../practices/set-out.ts";
import type { DoneTasks } from "./schedule-tasks.ts";

/** Days in which a failed sowing may be sown again. Source: house rule; two weeks of a short season. */
const AGAIN_WITHIN_DAYS = 14;

/** The task postponed to a day, its last good day no sooner than the new due day, and why. */
function postponedTo(task: Task, from: Day, due: Day, reason: Sentence): Task {
  const { window } = task;
  const next = latest(window.due, due);
  return {
    ...task,
    window: {
      ...window,
      earliest: latest(window.earliest, from),
      due: next,
      latest: latest(window.latest, next),
    },
    say: [...task.say.filter(({ part }) => part !== "why"), reason],
    basis: [...task.basis, "seen"],
  };
}

/** The sowing that a task is of; steps of the second and later ones begin with its number. */
const sowingOf = ({ sets, step }: Task) =>
  sets?.sowing ?? Number(/^sowing-(\d+)-/.exec(step)?.[1] ?? 1);

type NotDone = Extract<Observation, { readonly kind: "not yet" }>;
type NotYetDone = Extract<NotYet, { readonly practice: string }>;
type PlantingObservation = Extract<Observation, { readonly planting: string }>;

/** The task after the observations about its planting; null where it is not to be done. */
function applyToTask(
  task: Task,
  observations: readonly PlantingObservation[],
  began: BeginningDays,
): Task | null {
  let changed = task;
  for (const observation of observations)
    switch (observation.kind) {
      case "left":
        if (observation.practice === task.practice && (observation.task ?? task.id) === task.id)
          return null;
        break;
      case "lost":
        if (task.window.due >= observation.day && isLost(task, observation, began)) return null;
        break;
      case "failed":
        if (task.sets?.act === "start" && task.sets.sowing === (observation.sowing ?? 1))
          changed = again(changed, observation.day);
        break;
      case "not yet":
        if ("practice" in observation.of && isNext(task, observation.of))
          changed = later(changed, observation);
        break;
      default:
    }
  return changed;
}

/** Days on which the sowings of plantings went in, by planting and number. */
type BeginningDays = ReadonlyMap<string, ReadonlyMap<number, Day>>;

/** Days from anchors, from what is done and from what is still to be placed. */
function beginningDays(
  tasks: readonly Task[],
  anchors: Anchors,
  done: DoneTasks,
  plantings: Iterable<string>,
): BeginningDays {
  const days = new Map<string, Map<number, Day>>();
  for (const planting of plantings) {
    const own = new Map<number, Day>();
    for (let sowing = 1; sowing <= LAST_SOWING_NUMBER; sowing++) {
      const anchor = anchors.get(anchorKey(planting, sowing, "start"));
      if (anchor) own.set(sowing, anchor.day);
    }
    days.set(planting, own);
  }
  for (const { id, sets, window } of tasks)
    if (sets?.act === "start")
      days.get(sets.planting)?.set(sets.sowing, done.get(id)?.day ?? window.due);
  return days;
}

/** Whether it is of a sowing that is lost: the one that is named, else one that could be up by then, or all where none could. */
function isLost(
  task: Task,
  { day, planting, sowing }: Extract<PlantingObservation, { readonly kind: "failed" | "lost" }>,
  began: BeginningDays,
): boolean {
  if (sowing !== null) return sowingOf(task) === sowing;
  const days = began.get(planting);
  if (!days || ![...days.values()].some((each) => couldBeLost(each, day))) return true;
  return couldBeLost(days.get(sowingOf(task)) ?? day, day);
}

const isNext = (task: Task, of: NotYetDone) =>
  of.task === undefined
    ? task.practice === of.practice && (of.step === null || of.step === task.step)
    : task.id === of.task;

function again(task: Task, day: Day): Task {
  const reason = why("What was sown before came to nothing on ", { day }, ".");
  const postponed = postponedTo(task, plus(day, 1), plus(day, 1), reason);
  const last = latest(postponed.window.latest, plus(postponed.window.due, AGAIN_WITHIN_DAYS));
  return { ...postponed, window: { ...postponed.window, latest: last }, certainty: "expected" };
}

/** To the day that the gardener said, else to be looked at again in three days; where it is due later anyway it stays. */
function later(task: Task, { day, until, partly }: NotDone): Task {
  const due = until ?? plus(day, LOOK_AGAIN_DAYS);
  if (task.window.due > due) return task;
  if (until !== undefined)
    return postponedTo(task, until, until, why("You put it off on ", { day }, "."));
  if (partly)
    return postponedTo(
      task,
      plus(day, 1),
      due,
      why("Some of it was done on ", { day }, "; the rest is still to do."),
    );
  const reason = begins(task)
    ? why("It had to wait on ", { day }, "; look again.")
    : why("It was not ready on ", { day }, "; look again.");
  return postponedTo(task, plus(day, 1), due, reason);
}

/** Days for which a start may be overdue and still be what a line puts off. Source: house rule; longer ago it was done. */
const OVERDUE_DAYS = 30;

const begins = ({ sets }: Task) => sets?.act === "start" || sets?.act === "set out";

/** What a practice begins, whichever way the planting begins in the plan; null where it begins nothing. */
function startOf({ practice, step }: NotYetDone): "start" | "set out" | null {
  if (beginsOf({ practice, step }, PRACTICES) !== null) return "start";
  return practice === SETTING_OUT.name ? "set out" : null;
}

/** The observations, each start that is put off as the very task that is meant: of several sowings the one due nearest. */
function withMeantStarts(
  open: readonly Task[],
  observations: readonly PlantingObservation[],
): readonly PlantingObservation[] {
  return observations.flatMap((observation): readonly PlantingObservation[] => {
    if (observation.kind !== "not yet" || !("practice" in observation.of)) return [observation];
    const { day, of, planting } = observation;
    const act = of.task === undefined ? startOf(of) : null;
    if (act === null) return [observation];
    const far = ({ window }: Task) => Math.abs(window.due - day);
    const [meant] = open
      .filter(({ subject, sets }) => subject.key === planting && sets?.act === act)
      .filter(({ window }) => window.due >= day - OVERDUE_DAYS)
      .sort((a, b) => far(a) - far(b));
    return meant ? [{ ...observation, of: { ...of, task: meant.id } }] : [];
  });
}

const NO_ANCHORS: Anchors = new Map();

/**
 * The tasks after the diary's observations: those left this year or lost are dropped, those not ready are looked at
 * again, those that failed begin again. Done tasks stay as they were done. The order stays. `anchors` are those known
 * before these tasks.
 */
export function applyObservations(
  tasks: readonly Task[],
  observations: readonly Observation[],
  done: DoneTasks,
  anchors: Anchors = NO_ANCHORS,
): readonly Task[] {
  const about = new Map<string, readonly PlantingObservation[]>();
  for (const observation of observations)
    if ("planting" in observation && observation.kind !== "done" && observation.kind !== "seen")
      about.set(observation.planting, [...(about.get(observation.planting) ?? []), observation]);
  if (about.size === 0) return tasks;
  const open = tasks.filter(({ id, subject }) => about.has(subject.key) && !done.has(id));
  for (const [key, observations] of about) about.set(key, withMeantStarts(open, observations));
  const began = beginningDays(tasks, anchors, done, about.keys());
  return tasks.flatMap((task) => {
    const observations = done.has(task.id) ? undefined : about.get(task.subject.key);
    return observations ? (applyToTask(task, observations, began) ?? []) : task;
  });
}
