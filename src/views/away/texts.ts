import { joinWords, sayDay, sayWeekday } from "../../base/index.ts";
import { type ScheduledTask, tasksById } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayDays, voiceOf } from "../events/sentences.ts";
import { asManyAsFit, LONGEST_SESSION, lastDayText } from "../events/texts.ts";
import { titleOf } from "../events/titles.ts";
import { backLines } from "./back.ts";
import { type AwayContext, beforeLines } from "./before.ts";
import { type AwayListName, buildAwayLists } from "./lists.ts";
import { neighbourList } from "./neighbour.ts";
import type { AwayReport } from "./report.ts";

/** One text of an absence: a title under 50 characters, and lines, fewer than 900 characters in all. */
export type AwayText = {
  readonly list: AwayListName;
  readonly title: string;
  readonly text: string;
};

/**
 * The texts of an absence in the order they are read: before, what those at home have, the neighbour's list, what
 * waits, after. Before and after are always there, before only while they have not gone; the others where there is
 * something to say, the neighbour's where nobody is left. `scheduled` is the year's. Only those that are `wanted`.
 */
export function awayTexts(
  report: AwayReport,
  plan: Plan,
  scheduled: readonly ScheduledTask[],
  wanted: readonly AwayListName[] = IN_READING_ORDER,
): readonly AwayText[] {
  const byId = tasksById(scheduled);
  const jobs = buildAwayLists((name) => report.jobs[name].flatMap((id) => byId.get(id) ?? []));
  const context: AwayContext = { report, plan, jobs, scheduled: byId };
  return IN_READING_ORDER.flatMap((name) => (wanted.includes(name) ? TEXTS[name](context) : []));
}

const IN_READING_ORDER: readonly AwayListName[] = ["before", "home", "neighbour", "waits", "back"];

const TEXTS: Readonly<Record<AwayListName, (context: AwayContext) => readonly AwayText[]>> = {
  before: beforeText,
  home: homeText,
  neighbour: neighbourText,
  waits: waitsText,
  back: backText,
};

/** As many lines as fit; those at the end are always there. */
function buildAwayText(
  name: AwayListName,
  title: string,
  lines: readonly string[],
  ends: readonly string[] = [],
): AwayText {
  const room = LONGEST_SESSION - 1 - ["", ...ends].join("\n").length;
  return { list: name, title, text: [...asManyAsFit(lines, room), ...ends].join("\n") };
}

function beforeText(context: AwayContext): readonly AwayText[] {
  const { leave, begun } = context.report;
  const lines = beforeLines(context);
  const shown = lines.length > 0 ? lines : ["Nothing has to be done before."];
  return begun ? [] : [buildAwayText("before", `Before you go on ${sayDay(leave.from)}`, shown)];
}

/** Who does what, day by day; tasks of nobody in particular are for all who are at home. */
function homeText({ report, plan, jobs }: AwayContext): readonly AwayText[] {
  const { nameOf } = voiceOf(plan, "household");
  const byPeople = new Map<string, ScheduledTask[]>();
  for (const job of jobs.home) {
    const people = job.people.length > 0 ? job.people : report.leave.home;
    const who = `${joinWords(people.map(nameOf))} ${people.length === 1 ? "has" : "have"}:`;
    byPeople.set(who, [...(byPeople.get(who) ?? []), job]);
  }
  const lines = [...byPeople].flatMap(([who, theirs]) => [
    who,
    ...theirs.map((job) => homeLine(job, plan)),
  ]);
  return lines.length > 0
    ? [buildAwayText("home", `Meanwhile, ${sayDays(report.leave)}`, lines)]
    : [];
}

function homeLine(job: ScheduledTask, plan: Plan): string {
  return `${sayWeekday(job.day)}: ${titleOf([job], plan)}. ${lastDayText(job)}`.trim();
}

function neighbourText({ report, plan, jobs, scheduled }: AwayContext): readonly AwayText[] {
  const { leave, needs } = report;
  if (leave.alone.length === 0 && jobs.neighbour.length === 0) return [];
  const voice = voiceOf(plan, "reader");
  const { orders, brief, cautions } = neighbourList(jobs.neighbour, needs, {
    plan,
    voice,
    scheduled,
  });
  const days = leave.alone.length > 0 ? joinWords(leave.alone.map(sayDays)) : sayDays(leave);
  const shown = orders.length > 0 ? orders : ["Nothing needs a neighbour."];
  const ends = orders.length > 0 ? [...cautions, ALL_ELSE] : [];
  const title = `For the neighbour, ${days}`;
  const full = buildAwayText("neighbour", title, shown, ends);
  const isWhole = shown.every((line) => full.text.includes(line));
  return [isWhole ? full : buildAwayText("neighbour", title, brief, ends)];
}

const ALL_ELSE = "All else can be left. Thank you!";

function waitsText({ plan, jobs }: AwayContext): readonly AwayText[] {
  const lines = jobs.waits.map((job) => waitLine(job, plan));
  return lines.length > 0 ? [buildAwayText("waits", "This waits until you're back", lines)] : [];
}

/** `Thin lettuce, Salad bed. Fine till Friday 13 Aug.`; a warning has no last day. */
function waitLine(job: ScheduledTask, plan: Plan): string {
  const till = job.task.rhythm === "warning" ? "" : `Fine till ${sayWeekday(job.window.latest)}.`;
  return `${titleOf([job], plan)}. ${till}`.trim();
}

function backText(context: AwayContext): readonly AwayText[] {
  const lines = backLines(context);
  const shown = lines.length > 0 ? lines : ["Nothing presses; walk round once and look."];
  return [
    buildAwayText("back", `When you're back, after ${sayDay(context.report.leave.to)}`, shown),
  ];
}
