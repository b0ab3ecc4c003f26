import type { SowingContext } from "../growth/sowing-context.ts";
import { BOARD } from "./board.ts";
import { CARE } from "./care.ts";
import { CLOSE_BED } from "./close-bed.ts";
import { COVER } from "./cover.ts";
import { underCover } from "./cover-periods.ts";
import { DRAIN } from "./drain.ts";
import { FIRST_FROST } from "./first-frost.ts";
import { FROST_AHEAD } from "./frost-ahead.ts";
import { GREENHOUSE } from "./greenhouse.ts";
import { HARDEN_OFF } from "./harden-off.ts";
import { HARVEST } from "./harvest.ts";
import { HILL } from "./hill.ts";
import { NOT_YET_WARNING } from "./not-yet.ts";
import { PLANT_FOR_WINTER, STAND_THE_WINTER } from "./overwinter.ts";
import { PALE_LEAVES } from "./pale-leaves.ts";
import { PLANT } from "./plant.ts";
import { POT_ON } from "./pot-on.ts";
import type { Pass, Practice, SharedPractice } from "./practice.ts";
import { REPEAT } from "./repeat.ts";
import { SETTING_OUT, shareLadders } from "./set-out.ts";
import { SOIL_TEST } from "./soil-test.ts";
import { SOW_INDOORS } from "./sow-indoors.ts";
import { SOW_OUTDOORS } from "./sow-outdoors.ts";
import { SUPPORT } from "./support.ts";
import type { Task } from "./task.ts";
import { THIN } from "./thin.ts";
import { THINGS_TO_HAVE } from "./things-to-have.ts";
import { WARM_BED } from "./warm-bed.ts";
import { WATER } from "./water.ts";
import { WEED, WEED_BEDS } from "./weed.ts";
import { WINTER_LIDS, WINTER_SOW } from "./winter-sow.ts";

/** Every practice done planting by planting, as the season meets them. A planting drops one by its name. */
export const PRACTICES: readonly Practice[] = [
  THINGS_TO_HAVE,
  SOW_INDOORS,
  WINTER_SOW,
  SOW_OUTDOORS,
  PLANT,
  REPEAT,
  POT_ON,
  WINTER_LIDS,
  HARDEN_OFF,
  NOT_YET_WARNING,
  SETTING_OUT,
  BOARD,
  SUPPORT,
  PALE_LEAVES,
  ...CARE,
  WEED,
  THIN,
  HILL,
  HARVEST,
  FIRST_FROST,
  PLANT_FOR_WINTER,
  STAND_THE_WINTER,
];

/** Every practice done once for a bed or the garden. */
export const SHARED_PRACTICES: readonly SharedPractice[] = [
  WARM_BED,
  COVER,
  WEED_BEDS,
  WATER,
  FROST_AHEAD,
  GREENHOUSE,
  CLOSE_BED,
  DRAIN,
  SOIL_TEST,
];

/** A pass's tasks, those practices left out that a planting drops; plants that can share a ladder get one day. */
export function tasksOf(contexts: readonly SowingContext[], pass: Pass): readonly Task[] {
  const practices = PRACTICES.filter((practice) => practice.pass === pass);
  const tasks: Task[] = [];
  for (const context of contexts) {
    const { without } = context.planting;
    const wanted = practices.filter(({ name }) => !without.includes(name));
    const own = wanted.flatMap((practice) => practice.tasks(context));
    tasks.push(...(pass === "rest" ? underCover(context, own) : own));
  }
  return pass === "set out" ? shareLadders(tasks) : tasks;
}
