import { instantOf, isoOf, joinWords, sayCount } from "../../base/index.ts";
import type { PublishedState, ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { openOnes } from "./done.ts";
import { EVENING_BEFORE, type Event } from "./event.ts";
import { eventFor } from "./event-for.ts";
import { groupsBy, isAlikeTask, leadFirst } from "./grouping.ts";
import { hardeningText, hardeningTitle } from "./hardening.ts";
import { voiceOf } from "./sentences.ts";
import { sessionText } from "./sessions.ts";
import { LONGEST_SESSION, LONGEST_TEXT } from "./texts.ts";
import { LONGEST_TITLE } from "./titles.ts";
import { toldJobs } from "./told-jobs.ts";
import { visitTitle } from "./visit-title.ts";

/** Minutes before plants are carried out that a reminder rings. */
const BEFORE_RUNG = 10;

/**
 * What falls on one day for the same people outside their sessions: what hardens off (lead first), and jobs told with it;
 * either may be empty.
 */
export type WholeDay = {
  readonly rungs: readonly ScheduledTask[];
  readonly jobs: readonly ScheduledTask[];
};

/** Whether a task is anything else than a carrying out or a bringing in. */
export const isNoRung = ({ task }: ScheduledTask): boolean => task.rhythm !== "timed";

/** Work that may stand in one event with other work: what must not be overlooked tonight and warnings stand alone. */
const canShare = ({ task }: ScheduledTask) =>
  task.rhythm !== "warning" && task.rhythm !== "timed" && task.harm !== "tonight";

/**
 * The days of these tasks on which several things are told in one event. Jobs go with what hardens off that day where one of
 * their people takes part in it, else with the other jobs of one of their people; jobs that are alike anyway are left out.
 */
export function wholeDaysOf(
  scheduled: readonly ScheduledTask[],
  publishedState: PublishedState,
): readonly WholeDay[] {
  const byDay = groupsBy(scheduled, ({ day }) => day);
  return [...byDay.values()].flatMap((today) => {
    const rungs = leadRung(
      today.filter((each) => !isNoRung(each)),
      publishedState,
    );
    const hardeners = new Set(rungs.flatMap(({ people }) => people));
    const joins = ({ people }: ScheduledTask) =>
      rungs.length > 0 && (people.length === 0 || people.some((person) => hardeners.has(person)));
    const able = today.filter(canShare);
    const joined = able.filter(joins);
    const apart = groupsOfPeople(able.filter((each) => !joins(each)));
    return [
      ...(rungs.length > 0 ? [{ rungs, jobs: joined }] : []),
      ...apart.filter(areUnlike).map((jobs) => ({ rungs: [], jobs })),
    ];
  });
}

const areUnlike = ([first, ...others]: readonly ScheduledTask[]) =>
  first !== undefined && others.some((each) => !isAlikeTask(first, each));

/** The carrying out that gave the event its UID before, else the first by id, then the rest. */
function leadRung(
  rungs: readonly ScheduledTask[],
  publishedState: PublishedState,
): readonly ScheduledTask[] {
  const outs = rungs.filter(({ task }) => task.timed?.part !== "in");
  const [lead] = leadFirst(outs.length > 0 ? outs : rungs, publishedState);
  return lead ? [lead, ...leadFirst(rungs, {}).filter((each) => each !== lead)] : [];
}

/** Jobs by whose they are; what one of several may do goes to the first of them who has other work that day. */
function groupsOfPeople(jobs: readonly ScheduledTask[]): readonly (readonly ScheduledTask[])[] {
  const alone = new Set(jobs.flatMap(({ people }) => (people.length === 1 ? people : [])));
  const groups = groupsBy(jobs, ({ people }) => {
    const one = people.find((person) => alone.has(person));
    return one ?? people.join("+");
  });
  return [...groups.values()];
}

/** Whether a text for the household may have what a reader's must not. */
export function hasSecrets({ task, done, note }: ScheduledTask): boolean {
  return (
    done !== null || note?.for === "household" || task.say.some((each) => each.for === "household")
  );
}

/** The events of such a day: what hardens off alone in the tasks set, where jobs are told with it in the other. */
export function wholeDayEvents({ rungs, jobs }: WholeDay, plan: Plan): readonly Event[] {
  if (rungs.length === 0) return [jobsEvent(jobs, plan)];
  if (jobs.length === 0) return [hardeningEvent(rungs, plan, "both")];
  const alone = hardeningEvent(rungs, plan, "tasks");
  const { people } = alone;
  const whole = eventFor([...rungs, ...jobs], {
    ...alone,
    set: "sessions",
    kind: "session",
    title: titleWith(alone.title, rungs, jobs, plan),
    text: textWith(alone.text, rungs, jobs, plan),
    readerText: "",
  });
  return [alone, { ...whole, people }];
}

/** What hardens off, then the jobs; of two that are not both done the one that is open. */
function titleWith(
  head: string,
  rungs: readonly ScheduledTask[],
  jobs: readonly ScheduledTask[],
  plan: Plan,
): string {
  const [openRungs, openJobs] = [openOnes(rungs), openOnes(jobs)];
  if (openRungs.length === 0 && openJobs.length > 0) return visitTitle(jobs, plan);
  if (openRungs.length > 0 && openJobs.length === 0) return head;
  const named = openJobs.length > 0 ? openJobs : jobs;
  const title = visitTitle(named, plan, `${head}; `).replace(/^✓ (?=✓)/, "");
  if (!title.endsWith("…")) return title;
  const count = toldJobs(named, voiceOf(plan, "household")).length;
  const short = `${head}; ${sayCount(count, "more job")}`;
  return short.length <= LONGEST_TITLE ? short : head;
}

/** The text of what hardens off, then the jobs, with whose they are where those are not all who see them. */
function textWith(
  head: string,
  rungs: readonly ScheduledTask[],
  jobs: readonly ScheduledTask[],
  plan: Plan,
): string {
  const voice = voiceOf(plan, "household");
  const all = new Set(rungs.flatMap(({ people }) => people));
  const own = new Set(
    jobs.flatMap(({ task, people }) => (task.rhythm === "session" ? people : [])),
  );
  const whose =
    own.size > 0 && own.size < all.size ? `For ${joinWords([...own].map(voice.nameOf))}:\n` : "";
  const longest = LONGEST_SESSION - head.length - whose.length - 2;
  return `${head}\n\n${whose}${sessionText(jobs, plan, { voice, longest, titled: true })}`;
}

/** What hardens off on a day, from carrying out to bringing in; all day where no hour is known. Nobody is busy meanwhile. */
function hardeningEvent(rungs: readonly ScheduledTask[], plan: Plan, set: "tasks" | "both"): Event {
  const [lead] = rungs;
  if (!lead) throw new RangeError("an event needs a task");
  const say = (audience: "household" | "reader") =>
    hardeningText(rungs, voiceOf(plan, audience), LONGEST_TEXT);
  const at = rungs.flatMap((each) => each.at ?? []);
  const { clock } = plan.site;
  return eventFor(rungs, {
    key: lead.task.id,
    set,
    kind: "rung",
    title: hardeningTitle(rungs),
    text: say("household"),
    readerText: say("reader"),
    when:
      at.length > 0
        ? {
            kind: "timed",
            from: instantOf(lead.day, Math.min(...at.map(({ from }) => from)), clock),
            to: instantOf(lead.day, Math.max(...at.map(({ to }) => to)), clock),
          }
        : { kind: "all day", day: lead.day },
    day: lead.day,
    busy: false,
    remindMinutesBefore: at.length > 0 ? BEFORE_RUNG : EVENING_BEFORE,
  });
}

/** Jobs of one day as one all-day event. */
function jobsEvent(jobs: readonly ScheduledTask[], plan: Plan): Event {
  const [first] = jobs;
  if (!first) throw new RangeError("an event needs a task");
  const people = [...new Set(jobs.flatMap((each) => each.people))].sort();
  const whose = groupOwner(jobs) ?? people.join("+");
  return {
    ...eventFor(jobs, {
      key: `${whose === "" ? "everybody" : whose}/${isoOf(first.day)}/day`,
      set: "sessions",
      kind: "session",
      title: visitTitle(jobs, plan),
      text: sessionText(jobs, plan, { voice: voiceOf(plan, "household") }),
      readerText: "",
      when: { kind: "all day", day: first.day },
      day: first.day,
      busy: false,
      remindMinutesBefore: EVENING_BEFORE,
    }),
    people: whose === "" ? [] : groupOwner(jobs) === null ? people : [whose],
  };
}

/** The one person who has work of their own among these jobs; null where it is for several alike. */
const groupOwner = (jobs: readonly ScheduledTask[]): string | null =>
  jobs.find(({ people }) => people.length === 1)?.people[0] ?? null;
