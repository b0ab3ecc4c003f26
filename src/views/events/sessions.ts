import { earliest, joinWords, sayWeekday, verbWith } from "../../base/index.ts";
import { HARM_WEIGHT, roundMinutes, type ScheduledTask, type Task } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayPart, type Voice } from "./sentences.ts";
import { asManyAsFit, LONGEST_SESSION, lastDayText, signText, textOf } from "./texts.ts";
import { bedName, titleOf } from "./titles.ts";

/**
 * The jobs of a session in the order one walks: what is fetched or done under a roof first, then bed by bed as the plan
 * lists them, then by id; in its bed a planting goes in before its cover goes over it.
 */
export function inBedOrder(jobs: readonly ScheduledTask[], plan: Plan): readonly ScheduledTask[] {
  if (jobs.length < 2) return jobs;
  const order = new Map(plan.beds.map((bed, i) => [bed.key, i]));
  const at = ({ task }: ScheduledTask) =>
    isBeforeTheBeds(task) ? -1 : task.bed === null ? 999 : (order.get(task.bed) ?? 999);
  return [...jobs].sort((a, b) => at(a) - at(b) || (rankIn(a.task) < rankIn(b.task) ? -1 : 1));
}

const isBeforeTheBeds = ({ indoors, practice }: Task) => indoors || practice === "things to have";

/** Letters sort behind which a cover that goes on comes after all else of its planting. */
const LAST = "~";

/** Where a task stands among those of its bed, as its id sorts. */
function rankIn({ id, practice }: Task): string {
  return practice === "cover" ? id.replace("/cover/on", `/${LAST}cover/on`) : id;
}

/** Tasks by harm, then in walking order. */
export function inHarmOrder(jobs: readonly ScheduledTask[], plan: Plan): readonly ScheduledTask[] {
  return worstFirst(inBedOrder(jobs, plan));
}

/** By harm, else in their order. */
function worstFirst(jobs: readonly ScheduledTask[]): readonly ScheduledTask[] {
  const weight = ({ task }: ScheduledTask) => HARM_WEIGHT[task.harm];
  return [...jobs].sort((a, b) => weight(b) - weight(a));
}

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
function tooMuchLine(waiting: readonly ScheduledTask[], plan: Plan): string {
  if (waiting.length === 0) return "";
  const titles = waiting.map((job) => titleOf([job], plan));
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
  const minutes = jobs.reduce((sum, job) => sum + job.task.minutes, 0);
  const short = most.find((job) => job.task.minutes <= HALF_AN_HOUR);
  const first = short ?? most[0];
  if (jobs.length < 2 || minutes <= HALF_AN_HOUR || !first) return "";
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

/** How a session is told: what has to wait, the most characters, and whether a single job is told with its title. */
export type SessionTextOptions = {
  readonly voice: Voice;
  readonly waiting?: readonly ScheduledTask[];
  readonly longest?: number;
  readonly titled?: boolean;
};

/**
 * A session's text: what to take, a line a job with its minutes, and what to do with little time or in rain; a single
 * job has its full text, with no title where the event has it.
 */
export function sessionText(
  jobs: readonly ScheduledTask[],
  plan: Plan,
  { voice, waiting = [], longest = LONGEST_SESSION, titled = false }: SessionTextOptions,
): string {
  const ordered = inBedOrder(jobs, plan);
  const [only] = ordered;
  const head = takeLine(ordered);
  if (ordered.length === 1 && only && !titled) {
    const minutes = `${roundMinutes(only.task.minutes)} min.`;
    return `${head === "" ? minutes : `${minutes} ${head}`}\n${textOf(only, voice)}`;
  }
  const ends = [
    tooMuchLine(waiting, plan),
    halfHourLine(ordered, plan),
    rainLine(ordered, plan),
  ].filter((line) => line !== "");
  const fixed = [head, ...ends].join("\n").length + 2;
  const each = Math.floor((longest - fixed) / ordered.length) - 1;
  const jobLines = ordered.map((job) => jobLine(job, plan, voice, each));
  const isWhole = jobLines.join("\n").length <= longest - fixed;
  const lines = asManyAsFit(isWhole ? jobLines : likeLines(ordered, plan), longest - fixed);
  return [head, ...lines, ...ends].filter((line) => line !== "").join("\n");
}

/** What a job does, and in which bed: jobs alike in that are told in one line where a line each is too much. */
const alikeBy = ({ task: { title, bed } }: ScheduledTask) => `${title.verb}|${title.where && bed}`;

/** `75 min: Order seed: arugula, beets and carrots.`: a line for all that are alike, in the order of the first of them. */
function likeLines(jobs: readonly ScheduledTask[], plan: Plan): readonly string[] {
  const alike = new Map<string, ScheduledTask[]>();
  for (const job of jobs) alike.set(alikeBy(job), [...(alike.get(alikeBy(job)) ?? []), job]);
  return [...alike.values()].map((same) => {
    const [first] = same;
    const minutes = roundMinutes(same.reduce((sum, { task }) => sum + task.minutes, 0));
    if (!first || same.length === 1) return `${minutes} min: ${titleOf(same, plan)}.`;
    const objects = joinWords([...new Set(same.map(({ task }) => task.title.object))]);
    const bed = first.task.title.where === "bed" ? bedName(plan, first.task.bed) : "";
    const where = bed === "" ? "" : `, ${bed}`;
    return `${minutes} min: ${verbWith(first.task.title.verb, objects)}${where}.`;
  });
}

/**
 * Parts of a job's line in their order, with the rank in which they are kept: how, the last day, the caution, the note,
 * the sign, the reason.
 */
const PART_PRIORITY = [0, 3, 4, 5, 1, 2] as const;

/**
 * `20 min: Sow beets, Root bed. How. Right when: … Fine till …`: the title always, then whole sentences as far as they
 * fit; the sign and the reason are left out first.
 */
function jobLine(job: ScheduledTask, plan: Plan, voice: Voice, longest: number): string {
  const title = `${roundMinutes(job.task.minutes)} min: ${titleOf([job], plan)}.`;
  const { say } = job.task;
  const parts = [
    sayPart(say, "how", voice),
    signText(job, voice),
    sayPart(say, "why", voice),
    lastDayText(job),
    sayPart(say, "caution", voice),
    job.note ? sayPart([job.note], "why", voice) : "",
  ];
  let room = longest - title.length;
  for (const part of PART_PRIORITY) {
    const length = (parts[part] ?? "").length + 1;
    if (length <= room) room -= length > 1 ? length : 0;
    else parts[part] = "";
  }
  let line = title;
  for (const part of parts) if (part !== "") line += ` ${part}`;
  return line;
}
