import { type Day, latest, plus } from "../../base/index.ts";
import {
  type CoverFacts,
  type Pest,
  type PestCoverName,
  type PlantCoverName,
  pestCoverIn,
} from "../../crops/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { autumnAfter } from "../growth/autumn.ts";
import { hasCoolSeason } from "../growth/cool-season.ts";
import { flowerMilestone } from "../growth/flower.ts";
import { isReached, type Milestone, middle, milestoneOn } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom } from "../growth/through-winter.ts";
import { upMilestone } from "../growth/up.ts";
import { coversIn, regionOf } from "../rules/regions.ts";
import { coverAskedFor } from "./asked-covers.ts";
import {
  type CoverDay,
  type CoverPeriod,
  dayInPlace,
  inTime,
  type LaidCover,
  MAY_STAY_DAYS,
} from "./cover-days.ts";
import { sowingNumbers } from "./repeat.ts";
import { type TaskOf, window } from "./task.ts";

/**
 * The covers of a planting, by its crop's facts in their order (none of them under glass), then what else the plan
 * asks for. None once bees must reach its flowers, for a later sowing, which stands under the first one's, and for what was raised past the stage it is for.
 */
export function coversOf(context: SowingContext): readonly CoverPeriod[] {
  const known = covers.get(context) ?? calculateCovers(context);
  covers.set(context, known);
  return known;
}

/** The tasks under a cover and those that put it on ask for the covers of the same sowing. */
const covers = new WeakMap<SowingContext, readonly CoverPeriod[]>();

function calculateCovers(context: SowingContext): readonly CoverPeriod[] {
  if (context.sowing > 1 || context.planting.without.includes("cover")) return [];
  const own = oneAtATime(ownCovers(context, pestCoverIn(context.planting.under)));
  const asked = context.planting.under.filter(isLaid);
  const told = own.map(({ thing }) => thing);
  return [
    ...own,
    ...asked
      .filter((thing) => !told.includes(thing))
      .flatMap((thing, i) => coverAskedFor(context, thing, own.length + i)),
  ];
}

/** A board is told of by its own practice. */
const isLaid = (thing: PlantCoverName): thing is LaidCover => thing !== "board";

/** What the crop's facts ask for, with the plan's own cover against pests in place of theirs. */
function ownCovers(context: SowingContext, asked: PestCoverName | null): readonly CoverPeriod[] {
  const lain = context.climate.underGlass
    ? []
    : coversIn(regionOf(context.plan.site), context.crop);
  const facts = lain.filter(({ against }) => against !== "carrot fly" || !hasCoolSeason(context));
  return facts.flatMap((cover, i) => {
    const on = goesOn(context, cover);
    const suffix = i === 0 ? "" : `-${cover.against.replaceAll(" ", "-")}`;
    const { against, offSign, offWhy } = cover;
    const why = offWhy === undefined ? {} : { offWhy };
    const period = { context, against, thing: asked ?? cover.with, suffix, offSign, ...why };
    return on
      ? inTime({ ...period, on, off: comesOff(context, cover) }).map((each) => beforeHeat(each))
      : [];
  });
}

/** Highs [°C] from which it is too hot under fabric that only keeps wind and cool nights off. Source: common practice, 77 °F. */
const HOT_C = 25;
/** The least days under it, to root. Source: common practice. */
const ROOTED_DAYS = 14;
/** Days that it may stay on past that. Source: house rule; one hot day cooks what is under it. */
const HEAT_WAITS_DAYS = 7;

/** Off once days are hot, where no pest is kept off by it or summer would cook what is under it; as it was where its first flower opens sooner. */
function beforeHeat(period: CoverPeriod): CoverPeriod {
  const { context, against, thing, on, off } = period;
  const noPest = against === "cucumber beetles" && regionOf(context.plan.site) !== "north america";
  if (!noPest && !(thing === "fabric" && hasCoolSeason(context))) return period;
  const last = off?.window.due ?? plus(on.window.due, MAY_STAY_DAYS);
  for (let day = plus(on.window.due, ROOTED_DAYS); day < last; day = plus(day, 1))
    if (context.climate.air(day).highC >= HOT_C)
      return {
        ...period,
        off: {
          context,
          window: window(plus(day, -7), day, plus(day, HEAT_WAITS_DAYS), "earlier"),
          basis: [...on.basis],
          stage: { day, told: "As days grow hot, about " },
        },
        offSign: "Days are hot, and the leaves touch the fabric.",
        offWhy: "Nights are mild now, and on a hot day they would cook under it.",
        forBees: false,
      };
  return period;
}

/** Covers of one planting that would lie over each other are the first of them, till the last comes off. */
function oneAtATime(all: readonly CoverPeriod[]): readonly CoverPeriod[] {
  const periods: CoverPeriod[] = [];
  for (const each of all) {
    const at = periods.findIndex((other) => overlap(other, each));
    const other = periods[at];
    if (!other) periods.push(each);
    else if (each.off && other.off && each.off.window.due > other.off.window.due)
      periods[at] = { ...other, off: each.off, offSign: each.offSign, forBees: each.forBees };
  }
  return periods;
}

const overlap = (a: CoverPeriod, b: CoverPeriod) =>
  (a.off === null || a.off.window.due >= b.on.window.due) &&
  (b.off === null || b.off.window.due >= a.on.window.due);

/** Pests that lay only from spring on, so that what went in for the winter is covered as it grows on. */
const OF_SPRING: readonly Pest[] = ["onion fly"];

function goesOn(context: SowingContext, { on, against }: CoverFacts): CoverDay | null {
  const { crop, planting } = context;
  if (crop.perennial && planting.inSince !== null) return null;
  const grown = OF_SPRING.includes(against) ? growsOnFrom(context) : null;
  if (grown !== null) return dayGrownOn(context, grown);
  if (on === "in place" || isRaised(planting.start)) return dayInPlace(context);
  const up = upMilestone(context);
  if (!isReached(up)) return null;
  return {
    context,
    window: window(plus(up.early, -1), up.usual, plus(up.usual, 4), "earlier"),
    basis: up.basis,
    stage: { day: up.usual, told: "Counted from when it is up, " },
  };
}

function dayGrownOn(context: SowingContext, day: Day): CoverDay {
  return {
    context,
    window: window(day, day, plus(day, 3), "earlier"),
    basis: combineBasis(inPlace(context)?.basis ?? [], ["last frost"]),
    stage: { day, told: "As it grows on after the winter, " },
  };
}

/** What is raised has no coming up of its own outdoors: its days count from the day it is in its place. */
function seedling(context: SowingContext): Milestone {
  const anchor = inPlace(context);
  return isRaised(context.planting.start) && anchor
    ? milestoneOn(anchor.day, anchor.basis)
    : upMilestone(context);
}

/** The least days from going under a net to coming out, for what goes in shortly before frost. Source: house rule. */
const LEAST_ON_DAYS = 42;

/** The first frost after it is in its place; where there is none, nothing in the weather ends it. */
function frostAfter(context: SowingContext): Milestone {
  const anchor = inPlace(context);
  const autumn = anchor && autumnAfter(context, anchor.day);
  if (!autumn) return { none: "there is no frost" };
  return milestoneOn(latest(autumn.usual, plus(anchor.day, LEAST_ON_DAYS)), ["first frost"]);
}

const STAGES = {
  up: { of: seedling, told: "Counted from the last of the seedlings, " },
  flower: { of: flowerMilestone, told: "Counted from its first flower, " },
  "first harvest": { of: ripeMilestone, told: "Counted from its first harvest, " },
  "first frost": { of: frostAfter, told: "Counted from the usual first frost, " },
} as const;

/** By the last sowing under it that has such a day; null where none has. */
function comesOff(first: SowingContext, { off, offDays }: CoverFacts): CoverDay | null {
  const [least, most] = offDays.value;
  for (const sowing of [...sowingNumbers(first)].reverse()) {
    const context = sowing === first.sowing ? first : { ...first, sowing };
    const stage = STAGES[off].of(context);
    if (!isReached(stage)) continue;
    const on = (days: number) => plus(stage.usual, days);
    return {
      context,
      window: window(on(least), on(middle([least, most])), on(most + MAY_STAY_DAYS)),
      basis: stage.basis,
      stage: { day: stage.usual, told: STAGES[off].told },
    };
  }
  return null;
}

/**
 * A sowing's tasks with the cover that each is done under: those due after it is on and before it comes off. What puts it
 * on or takes it off, and what stands in no bed, is under none. `first` is the first sowing of a planting, mostly this one's,
 * whose covers are calculated already.
 */
export function underCover<Job extends TaskOf>(
  context: SowingContext,
  tasks: readonly Job[],
  first: SowingContext | null = null,
): readonly Job[] {
  const { bed, without } = context.planting;
  if (bed === null || without.includes("cover") || tasks.length === 0) return tasks;
  if (context.crop.covers.length === 0 && context.planting.under.length === 0) return tasks;
  const isItsOwn = first?.planting === context.planting;
  const periods = coversOf(first && isItsOwn ? first : { ...context, sowing: 1 });
  if (periods.length === 0) return tasks;
  return tasks.map((task) => {
    const { due } = task.window;
    const over = periods.find(
      ({ on, off }) => due > on.window.due && (off === null || due < off.window.due),
    );
    return over ? { ...task, under: `${bed}|${over.against ?? over.thing}` } : task;
  });
}
