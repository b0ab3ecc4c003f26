import { isoOf } from "../../../src/base/days/day.ts";
import { verbWith } from "../../../src/base/text/words.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import {
  PASSES,
  type Pass,
  type Practice,
  type WholeGarden,
} from "../../../src/engine/practices/practice.ts";
import type { Sentence } from "../../../src/engine/practices/sentence.ts";
import type { TaskOf } from "../../../src/engine/practices/task.ts";
import { sayPieces, type Voice } from "../../../src/views/events/sentences.ts";

const VOICE: Voice = { measures: "us", audience: "household", nameOf: (key) => key };

const short = (day: Parameters<typeof isoOf>[0]) => isoOf(day).slice(5);

/** `step earliest due latest` of each task, as month and date. */
export function windows(tasks: readonly TaskOf[]): readonly string[] {
  return tasks.map(({ step, window: { earliest, due, latest } }) =>
    [step, ...[earliest, due, latest].map(short)].join(" "),
  );
}

/** `verb object`, and where in brackets. */
export function titles(tasks: readonly TaskOf[]): readonly string[] {
  return tasks.map(({ title: { verb, object, where } }) =>
    where === null ? verbWith(verb, object) : `${verbWith(verb, object)} [${where}]`,
  );
}

/** Sentences in US measures, one a line, each with the part it stands in. */
export function words(say: readonly Sentence[]): string {
  return say.map(({ part, pieces }) => `${part}: ${sayPieces(pieces, VOICE)}`).join("\n");
}

/** What a task says. */
export function said(task: TaskOf | undefined): string {
  return task ? words(task.say) : "";
}

/** What `why` tells of a task, one sentence a line. */
export function told(task: TaskOf | undefined): string {
  return (task?.because ?? []).map((pieces) => sayPieces(pieces, VOICE)).join("\n");
}

/** A practice's tasks for one sowing of a planting, in all passes or those asked for. */
export function tasksIn<Name extends string>(
  practice: Practice<Name>,
  context: SowingContext,
  passes: readonly Pass[] = PASSES,
): readonly TaskOf<Name>[] {
  return passes.flatMap((pass) => practice.tasks[pass]?.(context) ?? []);
}

/** A practice's tasks for beds and the garden. */
export function sharedIn<Name extends string>(
  practice: Practice<Name>,
  garden: WholeGarden,
): readonly TaskOf<Name>[] {
  return practice.tasks.shared?.(garden) ?? [];
}

/** The windows of the same. */
export function windowsOf(
  practice: Practice,
  context: SowingContext,
  passes: readonly Pass[] = PASSES,
): readonly string[] {
  return windows(tasksIn(practice, context, passes));
}

/** A step of a practice for a planting; undefined where it has none such. */
export function stepOf(
  practice: Practice,
  context: SowingContext,
  step: string,
): TaskOf | undefined {
  return tasksIn(practice, context).find((task) => task.step === step);
}
