import type { Basis } from "../growth/anchors.ts";
import { why } from "./sentence.ts";
import type { TaskOf } from "./task.ts";

/** What a day is calculated from that a rough curve of the year leaves open. */
const BY_THE_CURVE: ReadonlySet<Basis> = new Set<Basis>(["soil", "warmth", "heat", "cold"]);

/** Said where the year's curve is rough. */
const ROUGH = why("A rough guess from your frost dates.");

/**
 * The tasks of a plan, each whose day depends on air or soil saying that it is a rough guess where their curve is; those of
 * a plan with monthly means, or with both its temperatures, as they are. What was seen is no guess.
 */
export function sayRough<Told extends Pick<TaskOf, "basis" | "say" | "practice" | "step">>(
  tasks: readonly Told[],
  { rough }: { readonly rough: boolean },
): readonly Told[] {
  if (!rough) return tasks;
  return tasks.map((task) => (isRough(task) ? { ...task, say: [...task.say, ROUGH] } : task));
}

/** What is brought in again on the day it was carried out hangs on that day alone. */
const isBringingIn = ({ practice, step }: Pick<TaskOf, "practice" | "step">) =>
  practice === "harden off" && step.startsWith("in-");

/** Tools and pots are cleaned in winter, whatever the spring: no date is said that could be wrong. */
const isCleaning = ({ practice, step }: Pick<TaskOf, "practice" | "step">) =>
  practice === "ready the garden" && (step === "tools" || step === "pots");

function isRough({ basis, ...task }: Pick<TaskOf, "basis" | "practice" | "step">): boolean {
  if (isBringingIn(task) || isCleaning(task) || basis.includes("seen")) return false;
  return basis.some((each) => BY_THE_CURVE.has(each));
}
