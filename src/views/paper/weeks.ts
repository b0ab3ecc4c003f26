import { type Day, type DaySpan, earliest, latest, plus, weekdayOf } from "../../base/index.ts";
import { planOfTask, type ScheduledTask, tasksById } from "../../engine/index.ts";
import { type Plan, planOn } from "../../garden/model/index.ts";
import type { Event } from "../events/event.ts";
import { inBedOrder } from "../events/job-order.ts";
import { type JobSpace, type SheetJob, sheetJobOf } from "./job.ts";
import { laddersOf, type SheetLadder } from "./ladder.ts";

/** A day of the sheet with its jobs in walking order, warnings before them; not empty. */
export type SheetDay = {
  readonly day: Day;
  readonly warnings: readonly SheetJob[];
  readonly jobs: readonly SheetJob[];
};

/** A week, Monday to Sunday, as much of it as lies in the month; with no days where there is nothing to do. */
export type SheetWeek = DaySpan & {
  readonly ladders: readonly SheetLadder[];
  readonly days: readonly SheetDay[];
};

/** What weeks are made from: all years' plans, and every task on its day. */
export type WeeksInput = {
  readonly plans: readonly Plan[];
  readonly scheduled: readonly ScheduledTask[];
};

/** Some events of a month week by week, the weeks without any too; days without any left out. */
export function weeksOf(
  events: readonly Event[],
  { plans, scheduled }: WeeksInput,
  { from, to }: DaySpan,
): readonly SheetWeek[] {
  const groups = groupsOf(events, scheduled);
  const jobFor = jobWithoutRepeats(plans, jobSpaceFor(groups));
  const rungs = groups.flat().filter(isRung);
  const ladders = laddersOf(rungs, planOn(plans, from));
  return spansOf(from, to).map((span) => {
    const within = (day: Day | undefined) =>
      day !== undefined && day >= span.from && day <= span.to;
    const own = groups
      .map((group) => group.filter((each) => !isRung(each)))
      .filter(([first]) => within(first?.day));
    return {
      ...span,
      ladders: ladders.filter(({ rungs: [first] }) => within(first?.day)),
      days: sheetDaysOf(own, plans, jobFor),
    };
  });
}

/** Carrying out and bringing in, which stand together in a ladder, whatever else their event tells. */
const isRung = ({ task }: ScheduledTask) => task.rhythm === "timed";

type SheetTaskGroup = readonly ScheduledTask[];

/** The tasks of each event, lead first. */
function groupsOf(
  events: readonly Event[],
  scheduled: readonly ScheduledTask[],
): readonly SheetTaskGroup[] {
  const byId = tasksById(scheduled);
  return events.map(({ tasks }) =>
    tasks.flatMap((id) => {
      const found = byId.get(id);
      return found ? [found] : [];
    }),
  );
}

/** Weeks from Monday to Sunday, the first and the last cut to the month. */
function spansOf(from: Day, to: Day): readonly DaySpan[] {
  const spans: DaySpan[] = [];
  for (let monday = plus(from, 1 - weekdayOf(from)); monday <= to; monday = plus(monday, 7))
    spans.push({ from: latest(monday, from), to: earliest(plus(monday, 6), to) });
  return spans;
}

/** Days in their order, each with its warnings and its jobs in walking order. */
function sheetDaysOf(
  groups: readonly SheetTaskGroup[],
  plans: readonly Plan[],
  jobFor: (group: SheetTaskGroup) => SheetJob,
): readonly SheetDay[] {
  const days = [...new Set(groups.flatMap(([first]) => (first ? [first.day] : [])))];
  return days
    .sort((a, b) => a - b)
    .map((day) => {
      const today = groupsInBedOrder(
        groups.filter(([first]) => first?.day === day),
        planOn(plans, day),
      );
      const isWarning = ([first]: SheetTaskGroup) => first?.task.rhythm === "warning";
      return {
        day,
        warnings: today.filter(isWarning).map(jobFor),
        jobs: today.filter((group) => !isWarning(group)).map(jobFor),
      };
    });
}

function groupsInBedOrder(
  groups: readonly SheetTaskGroup[],
  plan: Plan,
): readonly SheetTaskGroup[] {
  const leads = groups.flatMap(([first]) => (first ? [first] : []));
  return inBedOrder(leads, plan).flatMap((lead) => groups.filter(([first]) => first === lead));
}

/**
 * Numbers of tasks in a month, and the room that each has up to there. Source: house rule; measured on A4 and Letter,
 * two to three pages.
 */
const JOB_SPACES: readonly (readonly [number, JobSpace])[] = [
  [20, { letters: 170, signs: true }],
  [40, { letters: 110, signs: true }],
];
const LEAST_JOB_SPACE: JobSpace = { letters: 70, signs: false };

function jobSpaceFor(groups: readonly SheetTaskGroup[]): JobSpace {
  const tasks = groups.flat().filter(({ task }) => task.rhythm !== "timed").length;
  return JOB_SPACES.find(([most]) => tasks <= most)?.[1] ?? LEAST_JOB_SPACE;
}

/** The text in place of a how that is on the sheet already. */
const AS_ABOVE = "Done as above.";

/** Jobs in order; a how that is higher up already is only referred to, and its sign or caution is left out. */
function jobWithoutRepeats(
  plans: readonly Plan[],
  space: JobSpace,
): (group: SheetTaskGroup) => SheetJob {
  const seen = new Set<string>();
  const once = (text: string) => {
    if (seen.has(text)) return "";
    seen.add(text);
    return text;
  };
  return (group) => {
    const plan = planOfTask(group[0]?.task.id ?? "", plans);
    const job = sheetJobOf(group, plan, space);
    const [how = "", ...more] = job.how;
    return {
      ...job,
      how: more.length > 0 || how === "" ? job.how : [once(how) || AS_ABOVE],
      sign: once(job.sign),
      caution: once(job.caution),
    };
  };
}
