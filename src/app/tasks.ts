import {
  type Day,
  isoOf,
  isoWithOffset,
  plus,
  sayDay,
  sayMinute,
  sayWeekday,
  shortWeekday,
} from "../base/index.ts";
import { planOfTask, type ScheduledTask, type Year } from "../engine/index.ts";
import { newestPlan, type Plan } from "../garden/model/index.ts";
import { isAskedAbout, sayPart, seasonText, textOf, titleOf, voiceOf } from "../views/index.ts";

/** The tasks of some of the year's plans, in day order, then by id; what is one practice's of one planting by its hours. */
function tasksOf(year: Year, plans: readonly Plan[]): readonly ScheduledTask[] {
  const years = plans.map((plan) => `${plan.year}/`);
  return year.scheduled
    .filter(({ task }) => years.some((each) => task.id.startsWith(each)))
    .sort((a, b) => a.day - b.day || inOrder(a, b));
}

/** By id, but that plants are carried out before they are brought in. */
function inOrder(a: ScheduledTask, b: ScheduledTask): number {
  const hours = sameWork(a) === sameWork(b) ? (a.at?.from ?? 0) - (b.at?.from ?? 0) : 0;
  return hours || (a.task.id < b.task.id ? -1 : 1);
}

const sameWork = ({ task }: ScheduledTask) => task.id.slice(0, task.id.lastIndexOf("/"));

/** Each task of some of the year's plans in day order, as plain values: days ISO, hours local with their offset, names as the plan has them. */
export function tasksAsJson(year: Year, plans: readonly Plan[]): readonly TaskAsJson[] {
  return tasksOf(year, plans).map((each) => asJson(each, planOfTask(each.task.id, year.plans)));
}

/** The number of days after today that the list calls the week ahead. */
const AHEAD_DAYS = 6;

/** The morning's list of some of the year's plans, a line each: today with minutes and last good days, what is still open, the week ahead, and all that comes later. */
export function morningList(year: Year, plans: readonly Plan[], day: Day): readonly string[] {
  const tasks = tasksOf(year, plans);
  const newest = newestPlan(year.plans);
  const between = (from: Day, to: Day | null) =>
    tasks.filter((each) => each.day >= from && (to === null || each.day <= to));
  const plan = (each: ScheduledTask) => planOfTask(each.task.id, year.plans);
  const now = between(day, day).map((each) => [
    asLine(each, plan(each)),
    ...details(each, plan(each)),
  ]);
  const open = tasks.filter((each) => isAskedAbout(each, newest, day));
  const lines = (some: readonly ScheduledTask[]) => some.map((each) => asLine(each, plan(each)));
  return [
    ...under(`Today, ${sayWeekday(day)}`, now.length > 0 ? now.flat() : ["Nothing is due."]),
    ...under("Still open", lines(open)),
    ...under("The week ahead", lines(between(plus(day, 1), plus(day, AHEAD_DAYS)))),
    ...under("Later", lines(between(plus(day, AHEAD_DAYS + 1), null))),
  ];
}

const under = (head: string, lines: readonly string[]) =>
  lines.length === 0 ? [] : [head, ...lines, ""];

/** What the morning's list has for a job of today: how, the sign, how long, and until when it may wait. */
function details(scheduled: ScheduledTask, plan: Plan): readonly string[] {
  const { task, done, at } = scheduled;
  const minutes = task.rhythm === "session" && !done ? `About ${task.minutes} min.` : "";
  const hour = at && !done ? `From ${sayMinute(at.from)}.` : "";
  const text = textOf(scheduled, voiceOf(plan, "household")).split("\n");
  return [minutes, hour, ...text].filter((line) => line !== "").map((line) => `    ${line}`);
}

/** `Sat 8 May 2027  Thin beets, Root bed (Imre)  2027/beet/thin/1`. */
function asLine(scheduled: ScheduledTask, plan: Plan): string {
  const who = scheduled.people.map(voiceOf(plan, "household").nameOf).join(", ");
  const day = `${shortWeekday(scheduled.day)} ${sayDay(scheduled.day, true)}`.padEnd(17);
  return `${day} ${titleOf([scheduled], plan)}${who === "" ? "" : ` (${who})`}  ${scheduled.task.id}`;
}

/** A task as JSON gives it. */
export type TaskAsJson = ReturnType<typeof asJson>;

function asJson(scheduled: ScheduledTask, plan: Plan) {
  const { task, window, at, day, usual } = scheduled;
  const voice = voiceOf(plan, "household");
  return {
    id: task.id,
    subject: task.subject.kind,
    planting: task.subject.kind === "planting" ? task.subject.key : null,
    crop: task.crop,
    bed: task.bed,
    practice: task.practice,
    step: task.step,
    title: titleOf([scheduled], plan),
    text: textOf(scheduled, voice),
    why: [sayPart(task.say, "why", voice), seasonText(scheduled)].filter(Boolean).join(" "),
    harm: task.harm,
    rhythm: task.rhythm,
    certainty: task.certainty,
    earliest: isoOf(window.earliest),
    due: isoOf(window.due),
    latest: isoOf(window.latest),
    usual: usual === null ? null : isoOf(usual),
    day: isoOf(day),
    people: scheduled.people.map(voice.nameOf),
    minutes: task.minutes,
    starts: at ? isoWithOffset(day, at.from, plan.site.clock) : null,
    ends: at ? isoWithOffset(day, at.to, plan.site.clock) : null,
  };
}
