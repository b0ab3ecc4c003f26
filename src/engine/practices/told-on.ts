import type { Day } from "../../base/index.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import type { Task } from "./all.ts";
import { REPEAT } from "./repeat.ts";
import { SOW_OUTDOORS, sowingSentences } from "./sow-outdoors.ts";

/** A task as it is told where it comes on that day. */
export type ToldOn = (task: Task, day: Day) => Task;

/**
 * How the tasks of some sowings are told on the day they really come on: a row that goes in later is up later, and sown
 * again later. Other tasks come back as they were.
 */
export function toldOnOf(contexts: readonly SowingContext[]): ToldOn {
  const firsts = new Map<string, SowingContext>();
  for (const context of contexts)
    if (context.sowing === 1) firsts.set(context.planting.key, context);
  return (task, day) => {
    if (task.practice !== SOW_OUTDOORS.name && task.practice !== REPEAT.name) return task;
    const context = firsts.get(task.subject.key);
    const facts = context?.crop.outdoors;
    if (!context || !facts) return task;
    const rest = task.say.filter(({ part }) => part !== "how" && part !== "sign");
    return { ...task, say: [...sowingSentences(context, facts, day), ...rest] };
  };
}
