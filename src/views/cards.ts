import { type Day, verbWith } from "../base/index.ts";
import {
  planOfTask,
  roundMinutes,
  type ScheduledTask,
  type Task,
  type Year,
} from "../engine/index.ts";
import { wholeGarden } from "../garden/model/index.ts";
import { type Answer, answersTo } from "./answers.ts";
import { sayPieces, type Voice, voiceOf } from "./events/sentences.ts";
import { textOf } from "./events/texts.ts";
import { bedName, titleOf } from "./events/titles.ts";

/**
 * What a task's page shows, to be stored on its own and shown without plan, climate or engine: plain JSON, in the
 * household's words.
 */
export type TaskCard = {
  readonly id: string;
  /** The job alone, `Thin beets`, and as a calendar has it, `Thin beets, Root bed`. */
  readonly title: string;
  readonly fullTitle: string;
  /** The name of the bed it stands in, whose people it is (keys; empty: everybody), and what to take along. */
  readonly bed: string;
  readonly people: readonly string[];
  readonly needs: readonly string[];
  /** How, the sign, why now, the last good day and a caution, a line each. */
  readonly text: string;
  /** How long it takes, rounded as texts say it [minutes]; null for what has hours of its own, and for warnings. */
  readonly minutes: number | null;
  /** Its place in walking order: under a roof first, then bed by bed, in no bed last. */
  readonly bedRank: number;
  readonly day: Day;
  /** The first and the last day on which it does no harm, both inclusive. */
  readonly earliest: Day;
  readonly latest: Day;
  /** Why then, a sentence each, nearest reason first. */
  readonly why: readonly string[];
  /** What can be answered to it while it is open. */
  readonly answers: readonly Answer[];
  /** The day it was done, and by whom (name) where the diary says. */
  readonly done: { readonly day: Day; readonly by: string | null } | null;
};

/** A card for each of the year's tasks, in their order. */
export function taskCards(year: Year): readonly TaskCard[] {
  const whole = wholeGarden(year.plans);
  const ranks = new Map(whole.beds.map(({ key }, rank) => [key, rank]));
  const voice = voiceOf(whole, "household");
  return year.scheduled.map((scheduled) => ({
    ...cardOf(scheduled, voice),
    bed: bedName(whole, scheduled.task.bed),
    fullTitle: titleOf([scheduled], planOfTask(scheduled.task.id, year.plans)),
    bedRank: scheduled.task.indoors ? INDOORS : (ranks.get(scheduled.task.bed ?? "") ?? IN_NO_BED),
  }));
}

const hasMinutes = ({ rhythm }: Task) => rhythm === "session" || rhythm === "daily";

/** Ranks before the first bed, and after the last. */
const [INDOORS, IN_NO_BED] = [-1, 999];

function cardOf(
  scheduled: ScheduledTask,
  voice: Voice,
): Omit<TaskCard, "fullTitle" | "bedRank" | "bed"> {
  const { task, window, day, done, people } = scheduled;
  return {
    id: task.id,
    title: verbWith(task.title.verb, task.title.object),
    text: textOf(scheduled, voice),
    people,
    needs: task.needs,
    minutes: hasMinutes(task) ? roundMinutes(task.minutes) : null,
    day,
    earliest: window.earliest,
    latest: window.latest,
    why: task.because.map((pieces) => sayPieces(pieces, voice)),
    answers: answersTo(task),
    done: done && { day: done.day, by: done.by === null ? null : voice.nameOf(done.by) },
  };
}
