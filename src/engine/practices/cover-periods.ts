import { type Day, latest, plus } from "../../base/index.ts";
import {
  type CoverFacts,
  type Pest,
  type PestCoverName,
  type PlantCoverName,
  pestCoverIn,
} from "../../crops/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { type Basis, combineBasis } from "../growth/anchors.ts";
import { nextAnniversary } from "../growth/autumn.ts";
import { flowerMilestone } from "../growth/flower.ts";
import {
  isReached,
  type Milestone,
  middle,
  milestoneOn,
  type ReachedMilestone,
} from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom } from "../growth/through-winter.ts";
import { upMilestone } from "../growth/up.ts";
import { sowingNumbers } from "./repeat.ts";
import { type TaskOf, type Window, window } from "./task.ts";

/** A day that a cover goes on or comes off, and of which sowing and stage that is. */
export type CoverDay = {
  readonly context: SowingContext;
  readonly window: Window;
  readonly basis: readonly Basis[];
  /** The stage's day, and how `why` names it. */
  readonly stage: { readonly day: Day; readonly told: string };
};

/** What is laid over plants and taken off again. */
export type LaidCover = Exclude<PlantCoverName, "board">;

/** A planting's cover from the day it goes on to the day it comes off; off is null where nobody but the gardener says when. */
export type CoverPeriod = {
  readonly context: SowingContext;
  readonly against: Pest | null;
  readonly thing: LaidCover;
  /** How its ids end: nothing, or the pest where the planting has a cover before this one. */
  readonly suffix: string;
  readonly on: CoverDay;
  readonly off: CoverDay | null;
  readonly offSign: string | null;
  /** Whether bees end it, so that it comes off whatever stands beside it. */
  readonly forBees: boolean;
};

/** Days that taking off may wait where no bee is waiting for it. Source: house rule; a net too long harms little. */
const MAY_STAY_DAYS = 10;
/** Days past its first flower by which bees must be let in. Source: covers off at first flower, within three days; the first flowers are male. */
const BEES_WAIT_DAYS = 2;

/**
 * The covers of a planting, by its crop's facts in their order (none of them under glass), then what else the plan asks for. None once bees must reach
 * its flowers, for a later sowing, which stands under the first one's, and for what was raised past the stage it is for.
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
  const facts = context.climate.underGlass ? [] : context.crop.covers;
  return facts.flatMap((cover, i) => {
    const on = goesOn(context, cover);
    const suffix = i === 0 ? "" : `-${cover.against.replaceAll(" ", "-")}`;
    const { against, offSign } = cover;
    const period = { context, against, thing: asked ?? cover.with, suffix, offSign };
    return on ? inTime({ ...period, on, off: comesOff(context, cover) }) : [];
  });
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

function dayInPlace(context: SowingContext): CoverDay | null {
  const anchor = inPlace(context);
  if (!anchor) return null;
  return {
    context,
    window: window(anchor.day, anchor.day, plus(anchor.day, 3), "earlier"),
    basis: anchor.basis,
    stage: { day: anchor.day, told: "As it goes into its place, " },
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

const STAGES = {
  up: { of: seedling, told: "Counted from the last of the seedlings, " },
  flower: { of: flowerMilestone, told: "Counted from its first flower, " },
  "first harvest": { of: ripeMilestone, told: "Counted from its first harvest, " },
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

/** The cover with its end no later than the first flower that bees must reach; none where that opens before it is on. */
function inTime(period: Omit<CoverPeriod, "forBees">): readonly CoverPeriod[] {
  const { context, on, off } = period;
  const flower = context.crop.flowers?.forBees ? flowerMilestone(context) : null;
  if (!flower || !isReached(flower)) return [{ ...period, forBees: false }];
  if (flower.usual <= on.window.due) return [];
  if (off && off.window.latest < flower.early) return [{ ...period, forBees: false }];
  return [{ ...period, off: beforeBees(context, flower, on.window.due), forBees: true }];
}

/** Off as the first flower opens, on the early side, since it hides from who does not look. */
function beforeBees(context: SowingContext, flower: ReachedMilestone, on: Day): CoverDay {
  const { early, usual, basis } = flower;
  return {
    context,
    window: window(latest(plus(on, 1), early), usual, plus(usual, BEES_WAIT_DAYS), "earlier"),
    basis,
    stage: { day: usual, told: "As its first flower opens, about " },
  };
}

/**
 * A cover the plan asks for and the facts do not: on as it goes into its place, cloches two weeks before to warm it. Off for
 * bees; fabric and cloches also when frosts are over, and over what stands for years after its harvest. `before`: how many
 * covers the planting has before this one.
 */
function coverAskedFor(
  context: SowingContext,
  thing: LaidCover,
  before: number,
): readonly CoverPeriod[] {
  const { inSince } = context.planting;
  const suffix = before === 0 ? "" : `-${thing}`;
  const period = { context, against: null, thing, suffix, offSign: OFF_SIGNS[thing] };
  if (inSince !== null && context.crop.perennial) return overHarvest(period);
  const place = inSince === null ? dayInPlace(context) : coveredSince(context, inSince);
  if (!place) return [];
  const on = thing === "cloche" && inSince === null ? clochesOn(context, place) : place;
  if (on === null) return [];
  return inTime({ ...period, on, off: thing === "net" ? null : afterFrosts(context, place) });
}

const OFF_SIGNS: Readonly<Record<LaidCover, string | null>> = {
  net: null,
  fabric: "Nights stay mild, or the leaves press against it.",
  cloche: "Nights stay mild, or the leaves press against the top.",
};

/** What was sown in an earlier year lies under its cover since then. */
const coveredSince = (context: SowingContext, day: Day): CoverDay => ({
  context,
  window: window(day, day, day),
  basis: ["given"],
  stage: { day, told: "As it went into its place, " },
});

/** Days ahead that cloches are put out. Source: common practice, two weeks, so that the soil is warm by then. */
const CLOCHES_AHEAD_DAYS = 14;

/** Mean air [°C] in which what goes in needs no cloches. Source: house rule, 60 °F. */
const MILD_C = 15.5;

/** Days before the usual first frost by which cloches stand over what went in while it was mild. Source: house rule. */
const BEFORE_FROST_DAYS = 10;

/** Cloches warm what goes in early, and go over late sowings as the frosts come; null over what goes in for the summer. */
function clochesOn(context: SowingContext, place: CoverDay): CoverDay | null {
  const since = place.stage.day;
  const { firstFrost, lastFrost } = context.plan.site;
  const frost = firstFrost?.usual;
  const isLate = frost !== undefined && since >= plus(frost, -SUMMER_DAYS);
  if (!isLate || since <= (lastFrost?.late ?? since - 1))
    return context.climate.airC(since) < MILD_C ? twoWeeksBefore(place) : null;
  const day = latest(since, plus(frost, -BEFORE_FROST_DAYS));
  return {
    context,
    window: window(latest(since, plus(day, -7)), day, plus(day, 10), "earlier"),
    basis: combineBasis(place.basis, ["first frost"]),
    stage: { day: frost, told: "Some days before the usual first frost, " },
  };
}

function twoWeeksBefore(place: CoverDay): CoverDay {
  const day = plus(place.stage.day, -CLOCHES_AHEAD_DAYS);
  return { ...place, window: window(plus(day, -4), day, plus(day, 7)) };
}

/** What goes under its cover so long after the frosts, or later, keeps it till the next spring's [days]. Source: house rule. */
const SUMMER_DAYS = 90;

/** A cover that is asked for lies at least so long [days]. Source: house rule, three weeks: until roots have taken hold. */
const LEAST_DAYS = 21;

/** Nine springs in ten have had their last frost by then, and it has lain for some weeks; null in a place without frost. */
function afterFrosts(context: SowingContext, place: CoverDay): CoverDay | null {
  const frost = context.plan.site.lastFrost;
  if (!frost) return null;
  const since = place.stage.day;
  const day = latest(
    nextAnniversary(frost.late, plus(since, -SUMMER_DAYS)),
    plus(since, LEAST_DAYS),
  );
  return {
    context,
    window: window(plus(day, -7), day, plus(day, MAY_STAY_DAYS)),
    basis: ["last frost"],
    stage: { day, told: "Frosts are over and it has rooted by about " },
  };
}

/** Days before its harvest that what stands for years is covered. Source: house rule; before birds and late frosts find it. */
const BEFORE_HARVEST_DAYS = 14;

function overHarvest(
  period: Pick<CoverPeriod, "context" | "against" | "thing" | "suffix" | "offSign">,
): readonly CoverPeriod[] {
  const { context } = period;
  const ripe = ripeMilestone(context);
  const weeks = context.crop.perennial?.harvestWeeks.value[1] ?? 0;
  if (!isReached(ripe)) return [];
  const at = (day: Day, told: string): CoverDay => ({
    context,
    window: window(plus(day, -4), day, plus(day, 7)),
    basis: ripe.basis,
    stage: { day: ripe.usual, told },
  });
  const on = at(plus(ripe.usual, -BEFORE_HARVEST_DAYS), "Two weeks before its first harvest, ");
  const off = at(plus(ripe.usual, 7 * weeks), "After the weeks of its harvest, from ");
  return [{ ...period, on, off, offSign: "The last of it is picked.", forBees: false }];
}

/**
 * A sowing's tasks with the cover that each is done under: those due after it is on and before it comes off. What puts it
 * on or takes it off, and what stands in no bed, is under none.
 */
export function underCover<Job extends TaskOf>(
  context: SowingContext,
  tasks: readonly Job[],
): readonly Job[] {
  const { bed, without } = context.planting;
  if (bed === null || without.includes("cover") || tasks.length === 0) return tasks;
  if (context.crop.covers.length === 0 && context.planting.under.length === 0) return tasks;
  const periods = coversOf(context.sowing === 1 ? context : { ...context, sowing: 1 });
  if (periods.length === 0) return tasks;
  return tasks.map((task) => {
    const { due } = task.window;
    const over = periods.find(
      ({ on, off }) => due > on.window.due && (off === null || due < off.window.due),
    );
    return over ? { ...task, under: `${bed}|${over.against ?? over.thing}` } : task;
  });
}
