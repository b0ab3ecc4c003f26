import type { SowingContext } from "../growth/sowing-context.ts";
import { BOARD } from "./board.ts";
import { CURE_AND_STORE, FILL_IN_AND_BLANCH, SCOUT, STOP_THE_TOPS, YEARLY } from "./care.ts";
import { CLOSE_BED } from "./close-bed.ts";
import { COVER } from "./cover.ts";
import { underCover } from "./cover-periods.ts";
import { DRAIN } from "./drain.ts";
import { FEED } from "./feed.ts";
import { FIRST_FROST } from "./first-frost.ts";
import { READY_THE_GARDEN } from "./garden-year.ts";
import { GREENHOUSE } from "./greenhouse.ts";
import { HARDEN_OFF } from "./harden-off.ts";
import { HARVEST } from "./harvest.ts";
import { HEAT } from "./heat.ts";
import { HILL } from "./hill.ts";
import { NOT_YET_WARNING, shareWarnings } from "./not-yet.ts";
import { OVERWINTER } from "./overwinter.ts";
import { PLANT } from "./plant.ts";
import { POT_ON } from "./pot-on.ts";
import type { NeighbourHelp, Pass, Practice, WholeGarden } from "./practice.ts";
import { REPEAT } from "./repeat.ts";
import { SETTING_OUT, shareLadders } from "./set-out.ts";
import { SOIL_TEST } from "./soil-test.ts";
import { SOW_INDOORS } from "./sow-indoors.ts";
import { SOW_OUTDOORS } from "./sow-outdoors.ts";
import { STAKE_AND_TRAIN } from "./stake-and-train.ts";
import { CHECK_THE_STORES } from "./stores.ts";
import type { TaskOf } from "./task.ts";
import { THIN } from "./thin.ts";
import { THINGS_TO_HAVE } from "./things-to-have.ts";
import { WARM_BED } from "./warm-bed.ts";
import { WATER } from "./water.ts";
import { WEED } from "./weed.ts";
import { WINTER_SOW } from "./winter-sow.ts";

/** Every practice, as the season meets them. A planting drops one by its name. */
const ALL = [
  THINGS_TO_HAVE,
  SOW_INDOORS,
  WINTER_SOW,
  SOW_OUTDOORS,
  PLANT,
  REPEAT,
  POT_ON,
  HARDEN_OFF,
  NOT_YET_WARNING,
  SETTING_OUT,
  BOARD,
  STAKE_AND_TRAIN,
  FEED,
  STOP_THE_TOPS,
  FILL_IN_AND_BLANCH,
  SCOUT,
  CURE_AND_STORE,
  YEARLY,
  WARM_BED,
  COVER,
  WEED,
  WATER,
  THIN,
  HILL,
  HARVEST,
  HEAT,
  FIRST_FROST,
  OVERWINTER,
  GREENHOUSE,
  CLOSE_BED,
  DRAIN,
  SOIL_TEST,
  READY_THE_GARDEN,
  CHECK_THE_STORES,
] as const;

/** The name of a practice. */
export type PracticeName = (typeof ALL)[number]["name"];

/** A job with its window, before it has a day. */
export type Task = TaskOf<PracticeName>;

/** Every practice, as the season meets them: the words of plans and diaries too. */
export const PRACTICES: readonly Practice<PracticeName>[] = ALL;

const BY_NAME = new Map(PRACTICES.map((practice) => [practice.name, practice]));

/** The practice of that name. */
export function practiceOf(name: PracticeName): Practice<PracticeName> {
  const practice = BY_NAME.get(name);
  if (!practice) throw new Error(`no practice is called ${name}`);
  return practice;
}

/** How a neighbour who knows nothing of gardening does a job; null where it is none for a neighbour. */
export function neighbourHelp(task: Task): NeighbourHelp | null {
  const { neighbour } = practiceOf(task.practice).away;
  return neighbour?.may(task) ? neighbour.help : null;
}

/** A pass's tasks, those practices left out that a planting drops; plants that can share a ladder get one day, as do warnings. */
export function tasksOf(contexts: readonly SowingContext[], pass: Pass): readonly Task[] {
  const practices = PRACTICES.filter(({ tasks }) => tasks[pass]);
  const tasks: Task[] = [];
  let first: SowingContext | null = null;
  for (const context of contexts) {
    if (context.sowing === 1) first = context;
    const own = ownTasks(context, practices, pass);
    const all = pass === "rest" ? underCover(context, own, first) : own;
    for (const task of all) tasks.push(task);
  }
  if (pass === "set out") return shareLadders(tasks);
  return pass === "rest" ? shareWarnings(tasks) : tasks;
}

/** Loops, because some thousand short lists are joined in a build and `flatMap` takes longer over them than the practices. */
function ownTasks(
  context: SowingContext,
  practices: readonly Practice<PracticeName>[],
  pass: Pass,
): readonly Task[] {
  const { without } = context.planting;
  const own: Task[] = [];
  for (const { name, tasks } of practices)
    if (!without.includes(name)) for (const task of tasks[pass]?.(context) ?? []) own.push(task);
  return own;
}

/** What is done once for a bed or the garden, after the last pass. */
export function sharedTasksOf(garden: WholeGarden): readonly Task[] {
  return PRACTICES.flatMap(({ tasks }) => tasks.shared?.(garden) ?? []);
}
