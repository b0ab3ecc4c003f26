import { HARM_WEIGHT, type ScheduledTask, type Task } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";

/** Ranks of what is fetched or done under a roof, and of what belongs to no bed. */
const [BEFORE_THE_BEDS, IN_NO_BED] = [-1, 999];

const isBeforeTheBeds = ({ indoors, practice }: Task) => indoors || practice === "things to have";

/** Practices that take out what stood or came up by itself, before anything goes in. */
const CLEARS: readonly string[] = ["harvest", "weed"];

/**
 * When a task has its turn in its bed: covers come off, what is ripe and what is weed comes out, then seed and plants go
 * in, then all other care, and covers go on last.
 */
function turnInBed({ practice, step, sets }: Task): number {
  if (practice === "cover" || practice === "board") return step.startsWith("on") ? 4 : 0;
  if (CLEARS.includes(practice)) return 1;
  return sets === null ? 3 : 2;
}

/**
 * The jobs of a visit in the order one walks: what is fetched or done under a roof first, then bed by bed as the plan
 * lists them; in a bed as the work goes, so that what is sown or set out comes before its net; then by id.
 */
export function inBedOrder(jobs: readonly ScheduledTask[], plan: Plan): readonly ScheduledTask[] {
  if (jobs.length < 2) return jobs;
  const order = new Map(plan.beds.map((bed, i) => [bed.key, i]));
  const at = ({ task }: ScheduledTask) =>
    isBeforeTheBeds(task) ? BEFORE_THE_BEDS : (order.get(task.bed ?? "") ?? IN_NO_BED);
  return [...jobs].sort(
    (a, b) =>
      at(a) - at(b) || turnInBed(a.task) - turnInBed(b.task) || (a.task.id < b.task.id ? -1 : 1),
  );
}

/** The same after sunset: what is done under a roof comes last, since it needs no daylight. */
export function indoorsLast(jobs: readonly ScheduledTask[]): readonly ScheduledTask[] {
  const isDry = ({ task }: ScheduledTask) => isBeforeTheBeds(task);
  return [...jobs.filter((job) => !isDry(job)), ...jobs.filter(isDry)];
}

/** Whether a job needs daylight. */
export const needsDaylight = ({ task }: ScheduledTask): boolean => !isBeforeTheBeds(task);

/** Tasks by harm, then in walking order. */
export function inHarmOrder(jobs: readonly ScheduledTask[], plan: Plan): readonly ScheduledTask[] {
  return worstFirst(inBedOrder(jobs, plan));
}

/** By harm, else in their order. */
export function worstFirst(jobs: readonly ScheduledTask[]): readonly ScheduledTask[] {
  const weight = ({ task }: ScheduledTask) => HARM_WEIGHT[task.harm];
  return [...jobs].sort((a, b) => weight(b) - weight(a));
}

/**
 * Groups of jobs by what weighs most with a reader: harm, then what begins a crop, then what takes longest; things to get
 * come last, and else the order stays.
 */
export function weightiestFirst<Group extends readonly ScheduledTask[]>(
  groups: readonly Group[],
): readonly Group[] {
  const weights = new Map(groups.map((group) => [group, weightsOf(group)]));
  return [...groups].sort((a, b) => {
    const [theirs = [], its = []] = [weights.get(b), weights.get(a)];
    const at = its.findIndex((weight, i) => weight !== theirs[i]);
    return at < 0 ? 0 : (theirs[at] ?? 0) - (its[at] ?? 0);
  });
}

/** What a group is compared by, the heaviest first. */
function weightsOf(group: readonly ScheduledTask[]): readonly number[] {
  const most = (weight: (task: Task) => number) =>
    Math.max(...group.map(({ task }) => weight(task)));
  return [
    most(({ harm }) => HARM_WEIGHT[harm]),
    most(({ practice }) => (practice === "things to have" ? 0 : 1)),
    most(({ sets }) => (sets === null ? 0 : 1)),
    minutesOf(group),
  ];
}

/** How long some jobs take together [min]. */
export function minutesOf(jobs: readonly ScheduledTask[]): number {
  return jobs.reduce((sum, { task }) => sum + task.minutes, 0);
}
