import { type Climate, climateOf } from "../climate/climate.ts";
import { CROPS } from "../crops/crops.ts";
import type { Crop, Start } from "../crops/facts.ts";
import { type Day, plus } from "../days/day.ts";
import { type Act, anchorKey } from "../growth/anchors.ts";
import { lastHarvest } from "../growth/ending.ts";
import type { Growing } from "../growth/growing.ts";
import { type Refusal, refusalOf } from "../growth/limits.ts";
import { reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { autumnPlantingDay, plantingOutDay, settingOutDay } from "../growth/starting.ts";
import { isRaised } from "../plan/begin.ts";
import type { Bed, Plan, Planting } from "../plan/plan.ts";
import { grownOf, type Season } from "./lives.ts";
import { type Standing, standingIn, standsOn, takenCm } from "./taken.ts";

/**
 * What comes of starting a crop that day: ready in time even in a cold season; only in a usual or a warm one; not even
 * in a warm one; better begun later; or spoilt by the time of year.
 */
export type Chance = "safe" | "a gamble" | "too late" | "not yet" | "bad season";

/** A crop begun in one way on the day; days are first harvests in a warm, the usual and a cold season. */
export type Fit = {
  readonly crop: string;
  /** As a list says it: `beets`. */
  readonly name: string;
  readonly start: Start;
  readonly chance: Chance;
  readonly ready: { readonly early: Day; readonly usual: Day; readonly late: Day } | null;
  /** For `not yet`: the day it may go in. */
  readonly from: Day | null;
  /** For `bad season`: what spoils it. */
  readonly spoilt: Refusal | null;
};

/** What a bed has free on a day, and what may still be begun in it, in the order of the crop facts. Plain JSON. */
export type Room = {
  readonly bed: string;
  readonly day: Day;
  /** The bed's width and what is taken of it [cm]; null where the plan does not say. */
  readonly widthCm: number | null;
  readonly takenCm: number;
  /** What stands there, and the day it is surely gone; then what is to come, and when. */
  readonly standing: readonly { readonly name: string; readonly day: Day }[];
  readonly coming: readonly { readonly name: string; readonly day: Day }[];
  readonly fits: readonly Fit[];
  /** Names of crops that stand for years, which are another matter. */
  readonly forYears: readonly string[];
};

/** Room in a bed on a day, by the plan whose season that is (the newest). */
export function roomIn(season: Season, bed: Bed, day: Day): Room {
  const plan = season.plans[season.plans.length - 1];
  if (!plan) throw new Error("a season has a plan");
  const climate = climateOf(plan, season.facts);
  const standing = standingIn(grownOf(season), bed);
  const years = CROPS.filter(({ perennial }) => perennial !== null);
  const yearly = CROPS.filter(({ perennial }) => perennial === null);
  return {
    bed: bed.name,
    day,
    widthCm: bed.widthCm?.si ?? null,
    takenCm: takenCm(standing, day),
    standing: named(
      standing.filter((each) => standsOn(each, day)),
      ({ life }) => life.gone,
    ),
    coming: named(
      standing.filter(({ life }) => (life.out ?? life.starts) > day),
      ({ life }) => life.out ?? life.starts,
    ),
    fits: yearly.flatMap((crop) => fitsOf(crop, { plan, bed, day, climate })),
    forYears: years.map(({ many }) => many),
  };
}

function named(
  standing: readonly Standing[],
  dayOf: (each: Standing) => Day,
): readonly { name: string; day: Day }[] {
  return standing
    .map((each) => ({ name: each.planting.name ?? each.planting.written, day: dayOf(each) }))
    .sort((a, b) => a.day - b.day);
}

type Where = {
  readonly plan: Plan;
  readonly bed: Bed;
  readonly day: Day;
  readonly climate: Climate;
};

/** Each way it may still begin out there: seed in its place, what is planted, and plants raised or bought, which is one. */
function fitsOf(crop: Crop, where: Where): readonly Fit[] {
  const starts = crop.starts.filter((start) => !isRaised(start) || start === "plants");
  const raised = starts.length < crop.starts.length && !starts.includes("plants");
  return [...starts, ...(raised ? (["plants"] as const) : [])].map((start) =>
    fitOf(crop, start, where),
  );
}

function fitOf(crop: Crop, start: Start, where: Where): Fit {
  const growing = begun(crop, start, where);
  const { day } = where;
  const none = { crop: crop.key, name: crop.many, start, ready: null, from: null, spoilt: null };
  const first = firstDay(growing);
  if (first !== null && first > day) return { ...none, chance: "not yet", from: first };
  const refusal = start === "seed outdoors" ? refusalOf(growing, day) : null;
  if (refusal !== null && refusal !== "too late")
    return { ...none, chance: "bad season", spoilt: refusal };
  const ripe = ripeMilestone(growing);
  if (!reached(ripe)) return { ...none, chance: "too late" };
  const { early, usual, late } = ripe;
  const chance = chanceOf({ early, late }, lastHarvest(growing, day));
  return { ...none, chance, ready: chance === "too late" ? null : { early, usual, late } };
}

/** What a cold season never brings is told as ready on the very last day, and so that day is no longer safe. */
function chanceOf(ready: { readonly early: Day; readonly late: Day }, end: Day | null): Chance {
  if (end === null || ready.late < end) return "safe";
  return ready.early <= end ? "a gamble" : "too late";
}

/** The first day it may go out or in by the season; null where nothing holds it back. */
function firstDay(growing: Growing): Day | null {
  const free = { ...growing, planting: { ...growing.planting, fixed: { start: null, out: null } } };
  const { crop, planting } = growing;
  if (isRaised(planting.start)) return settingOutDay(free)?.day ?? null;
  if (crop.overwinter) return autumnPlantingDay(free)?.day ?? null;
  return crop.outdoors ? plantingOutDay(free, crop.outdoors).day : null;
}

/** A planting of nobody's, begun in the bed on the day. */
function begun(crop: Crop, start: Start, { plan, bed, day, climate }: Where): Growing {
  const facts = { ...crop, ...crop.whenBegun[start] };
  const key = `${plan.year}/room/${crop.key}`;
  const act: Act = isRaised(start) ? "set out" : "start";
  const anchor = { day, from: "given", grounds: ["given"], task: null } as const;
  const planting: Planting = { ...NOBODYS, key, crop: crop.key, written: crop.one, start };
  return {
    plan,
    planting: { ...planting, bed: bed.key, at: { file: plan.file, line: 1, column: 1 } },
    crop: facts,
    bed,
    sowing: 1,
    climate,
    anchors: new Map([[anchorKey(key, 1, act), anchor]]),
    facts: [],
    around: () => true,
  };
}

const NOBODYS: Omit<Planting, "key" | "crop" | "written" | "start" | "bed" | "at"> & {
  readonly bed: null;
  readonly at: Planting["at"];
} = {
  known: true,
  like: null,
  name: null,
  variety: null,
  bed: null,
  amount: null,
  days: null,
  hardenDays: null,
  fixed: { start: null, out: null },
  within: null,
  notBefore: null,
  inSince: null,
  repeat: null,
  under: [],
  sproutedFirst: false,
  after: null,
  without: [],
  whose: null,
  at: { file: "", line: 1, column: 1 },
};

/** The day before which the bed is wanted for what is to come; null where nothing is. */
export function wantedFrom({ coming }: Room): Day | null {
  return coming[0] ? plus(coming[0].day, -1) : null;
}
