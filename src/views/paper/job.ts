import { sayDay, sayMinute, shortWeekday } from "../../base/index.ts";
import { roundMinutes, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayPart, voiceOf } from "../events/sentences.ts";
import { signText } from "../events/texts.ts";
import { wholeTitle } from "../events/titles.ts";
import { firstSentences } from "./brief.ts";
import { sheetPlaceText } from "./title.ts";

/** The room that a sheet has for each job: letters of how, and whether the sign is there too. */
export type JobSpace = { readonly letters: number; readonly signs: boolean };

/** One line of the sheet: what to do and how, for whom, until when it does no harm, and whether it is done already. */
export type SheetJob = {
  readonly title: string;
  /** A line, or a line each for similar jobs done differently; empty where it is higher up on the sheet. */
  readonly how: readonly string[];
  readonly sign: string;
  readonly caution: string;
  /** Keys of people; empty: everybody. */
  readonly who: readonly string[];
  /** All of it together [minutes], rounded up, beyond an hour to half hours; null for what takes no time of its own. */
  readonly minutes: number | null;
  /** `10:00`, where it has an hour; else empty. */
  readonly hour: string;
  /** The last day that does no harm; empty where there is no slack or it is done. */
  readonly till: string;
  readonly done: string;
};

/** Similar tasks as one job. Not empty, all of one day and the same people. */
export function sheetJobOf(
  scheduled: readonly ScheduledTask[],
  plan: Plan,
  space: JobSpace,
): SheetJob {
  const first = scheduled[0];
  if (!first) throw new RangeError("a job needs a task");
  const voice = voiceOf(plan, "household");
  const minutes = scheduled.reduce((sum, { task }) => sum + task.minutes, 0);
  const signs = scheduled.map((each) => signText(each, voice));
  return {
    title: wholeTitle(scheduled, plan),
    how: howLines(scheduled, plan, space),
    sign: space.signs && signs.every((sign) => sign === signs[0]) ? (signs[0] ?? "") : "",
    caution: onceEach(scheduled.map(({ task }) => sayPart(task.say, "caution", voice))).join(" "),
    who: first.people,
    minutes: first.task.rhythm === "session" ? roundUpMinutes(minutes) : null,
    hour: first.at ? sayMinute(first.at.from) : "",
    till: tillText(scheduled),
    done: doneNote(first, voice.nameOf),
  };
}

const roundUpMinutes = (minutes: number) =>
  minutes > 60 ? 30 * Math.ceil(minutes / 30) : roundMinutes(minutes);

const onceEach = (texts: readonly string[]) => [...new Set(texts.filter((text) => text !== ""))];

/** How, once where all are done in the same way; else a shorter line for each way, after the names it is for. */
function howLines(
  scheduled: readonly ScheduledTask[],
  plan: Plan,
  { letters }: JobSpace,
): readonly string[] {
  const voice = voiceOf(plan, "household");
  const shortTexts = (most: number) =>
    scheduled.map(({ task }) => firstSentences(sayPart(task.say, "how", voice), most));
  if (onceEach(shortTexts(letters)).length < 2) return onceEach(shortTexts(letters));
  const names = new Map<string, Set<string>>();
  for (const [i, way] of shortTexts(letters / 2).entries()) {
    const each = scheduled[i];
    if (each) names.set(way, (names.get(way) ?? new Set()).add(sheetPlaceText(each, plan)));
  }
  return [...names].map(([way, its]) => `${[...its].join("; ")}: ${way}`);
}

/** The soonest of their last good days, with its weekday where that is near. */
function tillText(scheduled: readonly ScheduledTask[]): string {
  const waits = scheduled.filter(({ task, done }) => !done && task.rhythm !== "timed");
  const last = Math.min(...waits.map(({ window }) => window.latest));
  const soonest = waits.find(({ window }) => window.latest === last);
  if (!soonest || soonest.window.latest <= soonest.day) return "";
  const { latest } = soonest.window;
  const near = latest - soonest.day < NEAR_DAYS;
  return near ? `${shortWeekday(latest)} ${sayDay(latest)}` : sayDay(latest);
}

/** Days ahead for which a weekday helps. Source: house rule; further on a date alone is clearer. */
const NEAR_DAYS = 10;

function doneNote({ done }: ScheduledTask, nameOf: (person: string) => string): string {
  if (!done) return "";
  return `done ${sayDay(done.day)}${done.by === null ? "" : `, ${nameOf(done.by)}`}`;
}
