import { type Day, latest, plus } from "../../base/days/day.ts";
import type { Fact, NotYet } from "../../garden/diary/fact.ts";
import { LOOK_AGAIN_DAYS } from "../growth/not-yet.ts";
import { type Sentence, why } from "../practices/say.ts";
import type { Task } from "../practices/task.ts";
import type { Done } from "./place.ts";

/** Days that what failed may wait to be sown again. Source: house rule; two weeks of a short season. */
const AGAIN_WITHIN_DAYS = 14;

/** The task held back to a day, its last good day no sooner than the new due one, and why. */
function heldTo(task: Task, from: Day, due: Day, reason: Sentence): Task {
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
    grounds: [...task.grounds, "seen"],
  };
}

/** Sowings' numbers as steps begin: those of the second and later carry it. */
const sowingOf = ({ step }: Task) => Number(/^sowing-(\d+)-/.exec(step)?.[1] ?? 1);

type About = Extract<Fact, { readonly planting: string }>;

/** The task as the facts about its planting leave it; null where it is not to be done. */
function asSaidOf(task: Task, facts: readonly About[]): Task | null {
  let said = task;
  for (const fact of facts)
    switch (fact.kind) {
      case "left":
        if (fact.practice === task.practice && (fact.task ?? task.id) === task.id) return null;
        break;
      case "lost":
        if (task.window.due >= fact.day && isOf(task, fact.sowing)) return null;
        break;
      case "failed":
        if (task.sets?.act === "start" && task.sets.sowing === (fact.sowing ?? 1))
          said = again(said, fact.day);
        break;
      case "not yet":
        if ("practice" in fact.of && isNext(task, fact.of)) said = later(said, fact.day);
        break;
      default:
    }
  return said;
}

const isOf = (task: Task, sowing: number | null) => sowing === null || sowingOf(task) === sowing;

const isNext = (task: Task, of: Extract<NotYet, { readonly practice: string }>) =>
  of.task === undefined
    ? task.practice === of.practice && (of.step === null || of.step === task.step)
    : task.id === of.task;

function again(task: Task, day: Day): Task {
  const reason = why("What was sown before came to nothing on ", { day }, ".");
  const held = heldTo(task, plus(day, 1), plus(day, 1), reason);
  const last = latest(held.window.latest, plus(held.window.due, AGAIN_WITHIN_DAYS));
  return { ...held, window: { ...held.window, latest: last }, certainty: "expected" };
}

function later(task: Task, day: Day): Task {
  if (task.window.due > plus(day, LOOK_AGAIN_DAYS)) return task;
  const reason = why("It was not ready on ", { day }, "; look again.");
  return heldTo(task, plus(day, 1), plus(day, LOOK_AGAIN_DAYS), reason);
}

/**
 * The tasks as the diary leaves them: what is left this year or was lost is not told, what was not ready is looked at again,
 * what failed is begun again. What is done stays as it was done. The order is kept.
 */
export function asSaid(
  tasks: readonly Task[],
  facts: readonly Fact[],
  done: Done,
): readonly Task[] {
  const about = new Map<string, About[]>();
  for (const fact of facts)
    if ("planting" in fact && fact.kind !== "done" && fact.kind !== "seen")
      about.set(fact.planting, [...(about.get(fact.planting) ?? []), fact]);
  if (about.size === 0) return tasks;
  return tasks.flatMap((task) => {
    const facts = done.has(task.id) ? undefined : about.get(task.subject.key);
    return facts ? (asSaidOf(task, facts) ?? []) : task;
  });
}
