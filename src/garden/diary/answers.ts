import { slug } from "../../base/index.ts";
import { isAnswer, UNDO } from "../model/answers.ts";
import type { DiaryLine } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { practiceNames } from "../plan/practices.ts";
import type { ActObservation, Observation } from "./observation.ts";

/** A task's id in its parts: `2027/beet/thin/1`, `2027/bed/root-bed/weed/1`, `2027/garden/water/week-20`. */
const ID = /^(?<subject>\d{4}\/(?:bed\/[^/]+|[^/]+))\/(?<practice>[^/]+)\/(?<step>[^/]+)$/;

/** What a line that answers a task says; a note where the id is none or the words are no answer. */
export function observationOfAnswer(line: DiaryLine, vocabulary: Vocabulary): Observation {
  const { day, text, answers } = line;
  const { subject, practice: named, step } = ID.exec(answers?.task ?? "")?.groups ?? {};
  const practice = practiceNames(vocabulary).find((name) => slug(name) === named);
  if (!answers || !subject || !practice || !step || !isAnswer(text))
    return { kind: "note", day, text, why: "it answers no task" };
  const target = { planting: subject, practice, step, task: answers.task };
  const undo = text.startsWith(UNDO);
  const observation = observationOfWords(undo ? text.slice(UNDO.length) : text, line, target);
  if (!undo) return observation;
  return observation.kind === "not yet"
    ? { kind: "note", day, text, why: null }
    : { kind: "undone", day, what: observation, text };
}

type AnsweredTask = {
  readonly planting: string;
  readonly practice: string;
  readonly step: string;
  readonly task: string;
};

type AnswerObservation = ActObservation | Extract<Observation, { readonly kind: "not yet" }>;

function observationOfWords(
  text: string,
  { day, answers }: DiaryLine,
  target: AnsweredTask,
): AnswerObservation {
  const { planting, practice, step, task } = target;
  switch (text) {
    case "up": {
      const sowing = Number(/^sowing-(\d+)-/.exec(step)?.[1] ?? 1);
      return { kind: "seen", day, planting, stage: "up", sowing };
    }
    case "not yet":
      return { kind: "not yet", day, planting, of: { practice, step, task }, sowing: null };
    case "left this year":
      return { kind: "left", day, planting, practice, task, text };
    default:
      return { kind: "done", day, planting, practice, step, by: answers?.by ?? null, task };
  }
}
