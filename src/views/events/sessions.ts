import { earliest, joinWords, sayWeekday } from "../../base/index.ts";
import { roundMinutes, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { doneLines, openOnes } from "./done.ts";
import { inBedOrder, indoorsLast, minutesOf, worstFirst } from "./job-order.ts";
import type { Voice } from "./sentences.ts";
import { asManyAsFit, LONGEST_SESSION, textOf } from "./texts.ts";
import { titleOf } from "./titles.ts";
import { jobTexts, toldJobs } from "./told-jobs.ts";

/** Things a session's first line names, at the most. Source: house rule; more than a hand can hold is not read. */
const MOST_THINGS = 8;

function takeLine(jobs: readonly ScheduledTask[]): string {
  const things = [...new Set(jobs.flatMap((job) => job.task.needs))];
  if (things.length === 0) return "";
  const more = things.length - MOST_THINGS;
  const named = more > 0 ? [...things.slice(0, MOST_THINGS), `${more} more`] : things;
  return `Take: ${named.join(", ")}.`;
}

/** Jobs that the line on what waits names, at the most. Source: house rule. */
const MOST_WAITING = 3;

/**
 * What does not fit into the hours and does least harm, and until when the first of it may wait; empty where all fits.
 */
function tooMuchLine(waiting: readonly ScheduledTask[], plan: Plan, voice: Voice): string {
  if (waiting.length === 0) return "";
  const titles = toldJobs(waiting, voice).map((jobs) => titleOf(jobs, plan));
  const more = titles.length - MOST_WAITING;
  const named = more > 0 ? [...titles.slice(0, MOST_WAITING), `${more} more`] : titles;
  const last = earliest(...waiting.map((job) => job.window.latest));
  const till = last > (waiting[0]?.day ?? last) ? `, the first till ${sayWeekday(last)}` : "";
  return `More than the hours hold. What can wait best: ${joinWords(named)}${till}.`;
}

const HALF_AN_HOUR = 30;

/** The most important job that fits into half an hour, else the one to begin with. */
function halfHourLine(jobs: readonly ScheduledTask[], plan: Plan): string {
  const most = worstFirst(jobs);
  const short = most.find((job) => job.task.minutes <= HALF_AN_HOUR);
  const first = short ?? most[0];
  if (jobs.length < 2 || minutesOf(jobs) <= HALF_AN_HOUR || !first) return "";
  return `Only half an hour? ${short ? "" : "Begin with: "}${titleOf([first], plan)}.`;
}

function rainLine(jobs: readonly ScheduledTask[], plan: Plan): string {
  const dry = jobs.filter((job) => job.task.indoors);
  const wet = jobs.filter((job) => !job.task.indoors);
  const last = wet.length > 0 ? earliest(...wet.map((job) => job.window.latest)) : null;
  if (dry.length > 0 && wet.length > 0)
    return `Raining? ${joinWords(dry.map((job) => titleOf([job], plan)))}.`;
  const day = jobs[0]?.day ?? null;
  if (last === null || day === null || last <= day) return "";
  return `Raining? All of it can wait till ${sayWeekday(last)}.`;
}

/**
 * How a session is told: what has to wait, the most characters, whether a single job is told with its title, and whether
 * the sun sets before all is done.
 */
export type SessionTextOptions = {
  readonly voice: Voice;
  readonly waiting?: readonly ScheduledTask[];
  readonly longest?: number;
  readonly titled?: boolean;
  readonly dark?: boolean;
};

/**
 * A session's text: what to take, a paragraph for each job, what is done already, and what to do with little time or in
 * rain; a single job has its full text, with no title where the event has it.
 */
export function sessionText(
  jobs: readonly ScheduledTask[],
  plan: Plan,
  {
    voice,
    waiting = [],
    longest = LONGEST_SESSION,
    titled = false,
    dark = false,
  }: SessionTextOptions,
): string {
  const ordered = dark ? indoorsLast(inBedOrder(jobs, plan)) : inBedOrder(jobs, plan);
  const open = openOnes(ordered);
  const [only] = ordered;
  const head = takeLine(open);
  if (ordered.length === 1 && only && !titled) {
    if (only.done) return textOf(only, voice);
    const minutes = `${roundMinutes(only.task.minutes)} min.`;
    return `${head === "" ? minutes : `${minutes} ${head}`}\n${textOf(only, voice)}`;
  }
  const ends = [
    tooMuchLine(openOnes(waiting), plan, voice),
    halfHourLine(open, plan),
    rainLine(open, plan),
  ].filter((line) => line !== "");
  const done = doneLines(ordered, plan, voice);
  const around = [head, ends.join("\n")].filter((part) => part !== "");
  const room = longest - around.reduce((sum, part) => sum + part.length + 2, 0);
  const doneText = asManyAsFit(done, open.length > 0 ? Math.floor(room / 3) : room).join("\n");
  const left = doneText === "" ? room : room - doneText.length - 2;
  const paragraphs = jobTexts(toldJobs(open, voice), { plan, voice, longest: left });
  return [head, ...asManyAsFit(paragraphs, left, "\n\n"), doneText, ends.join("\n")]
    .filter((part) => part !== "")
    .join("\n\n");
}
