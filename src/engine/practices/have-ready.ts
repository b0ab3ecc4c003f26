import { capital, type Day, litres, plus } from "../../base/index.ts";
import { isAtHand } from "../../crops/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { practiceOf, type Task } from "./all.ts";
import { mixInAllLitres } from "./hill.ts";
import { everyOtherSaturday } from "./round.ts";
import { how, type Sentence, why } from "./sentence.ts";
import {
  objectOf,
  plantingTask,
  sharedTask,
  slugOf,
  type TaskOf,
  type TaskParts,
  window,
} from "./task.ts";
import { THINGS_TO_HAVE } from "./things-to-have.ts";

/** Things are at hand so many days before they are needed. Source: house rule; time to find, borrow or buy them. */
const AHEAD_DAYS = 7;
/** Days before that from which it may be told: back to the Saturday of the round before, and as much more as a told day stays put. Source: house rule. */
const EARLIER_DAYS = 16;

const { name: NAME } = THINGS_TO_HAVE;

/** What some bags of mix bring beside themselves: they are filled from it all summer. */
const BAGS = "bags or tubs, and mix";
const WITH_BAGS = "bagged mix";

/** What every garden has at hand already, and what is bought with the seed. Source: house rule. */
const EVERYDAY: readonly string[] = [
  "a watering can",
  "a hoe",
  "a bucket",
  "a knife",
  "shears",
  "string",
  "a pot of soapy water",
  "slips",
  "seed",
  "seed garlic",
  "tubers",
  "sets",
  "crowns",
];

/** Things that are had once these are found. */
const broughtWith = (things: readonly string[]) =>
  things.includes(BAGS) ? [...things, WITH_BAGS] : things;

/** A job and the day it stands on. */
export type JobOnDay = { readonly task: Task; readonly day: Day };

/** A job with those of its needs that no earlier job of its planting, its bed or, where it serves all, its practice has named. */
type ThingsForJob = JobOnDay & {
  readonly things: readonly string[];
  /** Needs of jobs that these things serve as well: `compost or plant food`, where it is compost. */
  readonly served: readonly string[];
};

/** How much mix the bags take in all, from planting to the last lift. */
function mixSentences(
  context: SowingContext | undefined,
  things: readonly string[],
): readonly Sentence[] {
  const mix = context && things.includes(BAGS) ? mixInAllLitres(context) : null;
  return mix === null ? [] : [how("About ", { quantity: litres(mix) }, " of mix in all.")];
}

/** What it is found for: the planting, the practice where it serves all crops, else what the job is done to. */
function objectFor({ task }: ThingsForJob, context: SowingContext | undefined): string {
  return context ? objectOf(context) : (practiceOf(task.practice).thingsFor ?? task.title.object);
}

function readyParts(needed: ThingsForJob, context: SowingContext | undefined): TaskParts {
  const { task, day, things, served } = needed;
  const all = practiceOf(task.practice).thingsFor !== null;
  const due = plus(day, -AHEAD_DAYS);
  return {
    window: window(plus(due, -EARLIER_DAYS), due, plus(day, -1), "earlier"),
    round: "every other Saturday",
    harm: "when you can",
    rhythm: "daily",
    minutes: 10,
    title: { verb: "…: get things ready", object: objectFor(needed, context), where: null },
    say: [
      how(
        `${capital(things.join("; "))}, by `,
        { day },
        all ? `, first for ${task.title.object}.` : ".",
      ),
      ...mixSentences(context, things),
      why("A week is time to find, borrow or buy what is missing."),
    ],
    because: [["A Saturday at least a week before it is needed, ", { day }, "."]],
    basis: combineBasis(task.basis),
    hangsOn: [task.id],
    brings: [...broughtWith(things), ...served],
  };
}

/** Jobs of one planting, bed or practice that want something new, first wanted first. */
function thingsForJobs(jobs: readonly JobOnDay[]): readonly ThingsForJob[] {
  const named = new Set(EVERYDAY);
  return [...jobs]
    .sort((a, b) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1))
    .map(({ task, day }) => {
      const things = [...new Set(task.needs)].filter((thing) => !named.has(thing));
      for (const thing of broughtWith(things)) named.add(thing);
      return { task, day, things, served: [] };
    })
    .filter(({ things }) => things.length > 0)
    .reduce<readonly ThingsForJob[]>(togetherOnOneRound, []);
}

/** What would be told of one owner on one Saturday is told once, by the day of the first job that wants any of it. */
function togetherOnOneRound(
  told: readonly ThingsForJob[],
  next: ThingsForJob,
): readonly ThingsForJob[] {
  const last = told.at(-1);
  if (!last || roundFor(last) !== roundFor(next)) return [...told, next];
  const isServed = (thing: string) =>
    thing.split(" or ").some((either) => last.things.includes(either));
  const things = [...last.things, ...next.things.filter((thing) => !isServed(thing))];
  const served = [...last.served, ...next.things.filter(isServed)];
  return [...told.slice(0, -1), { ...last, things, served }];
}

const roundFor = ({ day }: JobOnDay) => everyOtherSaturday(plus(day, -AHEAD_DAYS));

/** The jobs, without the needs that stand there or are at hand already for their planting. */
function withoutAtHand(
  jobs: readonly JobOnDay[],
  contextOf: ReadonlyMap<string, SowingContext>,
): readonly JobOnDay[] {
  return jobs.map((job) => {
    const { task, day } = job;
    const has = contextOf.get(task.subject.key)?.planting.has ?? [];
    if (has.length === 0) return job;
    return { day, task: { ...task, needs: task.needs.filter((thing) => !isAtHand(thing, has)) } };
  });
}

/** Jobs that need something, by whose things those are. */
function byOwner(jobs: readonly JobOnDay[], drops: ReadonlySet<string>): readonly JobOnDay[][] {
  const owners = new Map<string, JobOnDay[]>();
  for (const job of jobs) {
    const { needs, practice, subject } = job.task;
    if (needs.length === 0 || practice === NAME || drops.has(subject.key)) continue;
    const owner = practiceOf(practice).thingsFor ?? subject.key;
    const known = owners.get(owner);
    if (known) known.push(job);
    else owners.set(owner, [job]);
  }
  return [...owners.values()];
}

/**
 * Whatever `jobs` of a year need beside everyday tools, a week before the day that first wants it, on every other
 * Saturday: each thing once for its planting or bed, what serves every crop once for the garden. Jobs may stand in any
 * order; `contexts` are those of the year's plantings, of which those that drop the practice are told nothing.
 */
export function haveReadyTasks(
  year: number,
  jobs: readonly JobOnDay[],
  contexts: readonly SowingContext[],
): readonly TaskOf<"things to have">[] {
  const contextOf = new Map<string, SowingContext>();
  for (const each of contexts) if (each.sowing === 1) contextOf.set(each.planting.key, each);
  const dropping = contexts.filter(({ planting }) => planting.without.includes(NAME));
  const drops = new Set(dropping.map(({ planting }) => planting.key));
  return byOwner(withoutAtHand(jobs, contextOf), drops)
    .flatMap(thingsForJobs)
    .map((needed) => {
      const { practice, step, subject, bed } = needed.task;
      const all = practiceOf(practice).thingsFor !== null;
      const context = all ? undefined : contextOf.get(subject.key);
      const parts = readyParts(needed, context);
      if (context) return plantingTask(context, NAME, `${slugOf(practice)}-${step}`, parts);
      const thing = needed.things[0]?.replaceAll(" ", "-") ?? step;
      return sharedTask(year, all ? null : bed, NAME, `${slugOf(practice)}-${thing}`, parts);
    });
}
