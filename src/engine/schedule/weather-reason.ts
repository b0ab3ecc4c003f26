import { WORTH_SAYING_K } from "../climate/drift.ts";
import type { Basis } from "../growth/anchors.ts";
import { type Sentence, why } from "../practices/sentence.ts";
import { CALM_DAYS } from "./calm.ts";
import type { ScheduledTask } from "./scheduled-task.ts";

/** What a day hangs on where warmth or cold can move it. */
const BY_WARMTH: readonly Basis[] = ["soil", "warmth", "heat", "cold"];

/** A difference from a usual month that is worth a stronger word [K]. Source: house rule. */
const MUCH_K = 2.5;

/**
 * The same task, with what the last weeks were like where that can have moved it: its day hangs on warmth, nothing was seen of it, and
 * it comes later than usual after cold weeks or earlier after warm ones. `driftK`: how much warmer they were [K]; null: not known.
 */
export function withWeatherReason(scheduled: ScheduledTask, driftK: number | null): ScheduledTask {
  const { task, window, usual, done } = scheduled;
  if (driftK === null || usual === null || done !== null) return scheduled;
  const later = window.due - usual;
  const fits = Math.abs(driftK) >= WORTH_SAYING_K && Math.sign(later) === -Math.sign(driftK);
  const byWarmth = task.basis.some((each) => BY_WARMTH.includes(each));
  if (!fits || Math.abs(later) < CALM_DAYS || !byWarmth || task.basis.includes("seen"))
    return scheduled;
  return { ...scheduled, task: { ...task, say: [...task.say, weeksWere(driftK)] } };
}

function weeksWere(driftK: number): Sentence {
  const much = Math.abs(driftK) >= MUCH_K ? "much " : "";
  return why(`The last weeks were ${much}${driftK > 0 ? "warmer" : "colder"} than usual.`);
}
