import { isoOf } from "../../../src/base/days/day.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import type { Practice } from "../../../src/engine/practices/practice.ts";
import type { Sentence } from "../../../src/engine/practices/sentence.ts";
import type { Task } from "../../../src/engine/practices/task.ts";
import { sayPieces, type Voice } from "../../../src/views/events/sentences.ts";

const VOICE: Voice = { measures: "us", audience: "household", nameOf: (key) => key };

const short = (day: Parameters<typeof isoOf>[0]) => isoOf(day).slice(5);

/** `step earliest due latest` of each task, as month and date. */
export function windows(tasks: readonly Task[]): readonly string[] {
  return tasks.map(({ step, window: { earliest, due, latest } }) =>
    [step, ...[earliest, due, latest].map(short)].join(" "),
  );
}

/** `verb object`, and where in brackets. */
export function titles(tasks: readonly Task[]): readonly string[] {
  return tasks.map(({ title: { verb, object, where } }) =>
    where === null ? `${verb} ${object}` : `${verb} ${object} [${where}]`,
  );
}

/** Sentences in US measures, one a line, each with the part it stands in. */
export function words(say: readonly Sentence[]): string {
  return say.map(({ part, pieces }) => `${part}: ${sayPieces(pieces, VOICE)}`).join("\n");
}

/** What a task says. */
export function said(task: Task | undefined): string {
  return task ? words(task.say) : "";
}

/** What `why` tells of a task, one sentence a line. */
export function told(task: Task | undefined): string {
  return (task?.because ?? []).map((pieces) => sayPieces(pieces, VOICE)).join("\n");
}

/** A practice's windows for a planting. */
export function windowsOf(practice: Practice, growing: SowingContext): readonly string[] {
  return windows(practice.tasks(growing));
}

/** A step of a practice for a planting; undefined where it has none such. */
export function stepOf(practice: Practice, growing: SowingContext, step: string): Task | undefined {
  return practice.tasks(growing).find((task) => task.step === step);
}
