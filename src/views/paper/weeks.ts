import { type Day, earliest, latest, plus, weekdayOf } from "../../base/days/day.ts";
import { planOn } from "../../engine/schedule/horizon.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import { planOfTask } from "../../engine/schedule/year-of.ts";
import type { Plan } from "../../garden/model/plan.ts";
import type { Event } from "../events/event.ts";
import { walking } from "../events/sessions.ts";
import { type Job, jobOf, type Room } from "./job.ts";
import { type Ladder, laddersOf } from "./ladder.ts";

/** A day of the sheet with its jobs in walking order, warnings before them; not empty. */
export type SheetDay = {
  readonly day: Day;
  readonly warnings: readonly Job[];
  readonly jobs: readonly Job[];
};

/** A week, Monday to Sunday, as much of it as lies in the month; with no days where there is nothing to do. */
export type Week = {
  readonly from: Day;
  readonly to: Day;
  readonly ladders: readonly Ladder[];
  readonly days: readonly SheetDay[];
};

/** What weeks are made from: all years' plans, and every task on its day. */
export type Told = { readonly plans: readonly Plan[]; readonly placed: readonly Placed[] };

/** Days from the first to the last, both inclusive. */
export type Span = { readonly from: Day; readonly to: Day };

/** Some events of a month week by week, the weeks without any too; days without any left out. */
export function weeksOf(
  events: readonly Event[],
  { plans, placed }: Told,
  { from, to }: Span,
): readonly Week[] {
  const groups = groupsOf(events, placed);
  const told = tellingOnce(plans, roomFor(groups));
  const rungs = groups.filter(([first]) => first?.task.rhythm === "timed").flat();
  const ladders = laddersOf(rungs, planOn(plans, from));
  return spansOf(from, to).map((span) => {
    const within = (day: Day | undefined) =>
      day !== undefined && day >= span.from && day <= span.to;
    const own = groups.filter(
      ([first]) => first && first.task.rhythm !== "timed" && within(first.day),
    );
    return {
      ...span,
      ladders: ladders.filter(({ rungs: [first] }) => within(first?.day)),
      days: daysOf(own, plans, told),
    };
  });
}

type Group = readonly Placed[];

/** The tasks of each event, lead first. */
function groupsOf(events: readonly Event[], placed: readonly Placed[]): readonly Group[] {
  const byId = new Map(placed.map((each) => [each.task.id, each]));
  return events.map(({ tasks }) =>
    tasks.flatMap((id) => {
      const found = byId.get(id);
      return found ? [found] : [];
    }),
  );
}

/** Weeks from Monday to Sunday, the first and the last cut to the month. */
function spansOf(from: Day, to: Day): readonly Span[] {
  const spans: Span[] = [];
  for (let monday = plus(from, 1 - weekdayOf(from)); monday <= to; monday = plus(monday, 7))
    spans.push({ from: latest(monday, from), to: earliest(plus(monday, 6), to) });
  return spans;
}

/** Days in their order, each with its warnings and its jobs in walking order. */
function daysOf(
  groups: readonly Group[],
  plans: readonly Plan[],
  told: (group: Group) => Job,
): readonly SheetDay[] {
  const days = [...new Set(groups.flatMap(([first]) => (first ? [first.day] : [])))];
  return days
    .sort((a, b) => a - b)
    .map((day) => {
      const today = walked(
        groups.filter(([first]) => first?.day === day),
        planOn(plans, day),
      );
      const isWarning = ([first]: Group) => first?.task.rhythm === "warning";
      return {
        day,
        warnings: today.filter(isWarning).map(told),
        jobs: today.filter((group) => !isWarning(group)).map(told),
      };
    });
}

function walked(groups: readonly Group[], plan: Plan): readonly Group[] {
  const leads = groups.flatMap(([first]) => (first ? [first] : []));
  return walking(leads, plan).flatMap((lead) => groups.filter(([first]) => first === lead));
}

/** Tasks of a month up to which there is so much room for each. Source: house rule; measured on A4 and Letter, two to three pages. */
const ROOMS: readonly (readonly [number, Room])[] = [
  [20, { letters: 170, signs: true }],
  [40, { letters: 110, signs: true }],
];
const LEAST_ROOM: Room = { letters: 70, signs: false };

function roomFor(groups: readonly Group[]): Room {
  const tasks = groups.flat().filter(({ task }) => task.rhythm !== "timed").length;
  return ROOMS.find(([most]) => tasks <= most)?.[1] ?? LEAST_ROOM;
}

/** What stands for a how that was told. */
const AS_ABOVE = "Done as above.";

/** Jobs in turn; of a how that stands higher up already only that is said, and a sign or a caution is left out. */
function tellingOnce(plans: readonly Plan[], room: Room): (group: Group) => Job {
  const said = new Set<string>();
  const once = (text: string) => {
    if (said.has(text)) return "";
    said.add(text);
    return text;
  };
  return (group) => {
    const plan = planOfTask(group[0]?.task.id ?? "", plans);
    const job = jobOf(group, plan, room);
    const [how = "", ...more] = job.how;
    return {
      ...job,
      how: more.length > 0 || how === "" ? job.how : [once(how) || AS_ABOVE],
      sign: once(job.sign),
      caution: once(job.caution),
    };
  };
}
