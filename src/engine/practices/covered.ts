import { type Day, latest, plus } from "../../base/days/day.ts";
import type { CoverFacts, Pest } from "../../crops/facts.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import type { Ground } from "../growth/anchors.ts";
import { flowerMilestone } from "../growth/flower.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { type Milestone, middle, onDay, type Reached, reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import { sowingNumbers } from "./repeat.ts";
import { type Task, type Window, window } from "./task.ts";

/** A day that a cover goes on or comes off, and of which sowing and stage that is. */
export type CoverDay = {
  readonly growing: Growing;
  readonly window: Window;
  readonly grounds: readonly Ground[];
  /** The stage's day, and how `why` names it. */
  readonly stage: { readonly day: Day; readonly told: string };
};

/** A planting's cover from the day it goes on to the day it comes off; off is null where nobody but the gardener says when. */
export type Covered = {
  readonly growing: Growing;
  readonly against: Pest | null;
  readonly thing: CoverFacts["with"];
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
 * The covers of a planting, by its crop's facts in their order; else the one the plan asks for. None once bees must reach
 * its flowers, for a later sowing, which stands under the first one's, and for what was raised past the stage it is for.
 */
export function coversOf(growing: Growing): readonly Covered[] {
  if (growing.sowing > 1 || growing.planting.without.includes("cover")) return [];
  const facts = growing.crop.covers;
  if (facts.length === 0) return askedFor(growing);
  return oneAtATime(
    facts.flatMap((cover, i) => {
      const on = goesOn(growing, cover);
      const suffix = i === 0 ? "" : `-${cover.against.replaceAll(" ", "-")}`;
      const { against, with: thing, offSign } = cover;
      const covered = { growing, against, thing, suffix, offSign };
      return on ? inTime({ ...covered, on, off: comesOff(growing, cover) }) : [];
    }),
  );
}

/** Covers of one planting that would lie over each other are the first of them, till the last comes off. */
function oneAtATime(all: readonly Covered[]): readonly Covered[] {
  const kept: Covered[] = [];
  for (const each of all) {
    const at = kept.findIndex((other) => overlap(other, each));
    const other = kept[at];
    if (!other) kept.push(each);
    else if (each.off && other.off && each.off.window.due > other.off.window.due)
      kept[at] = { ...other, off: each.off, offSign: each.offSign, forBees: each.forBees };
  }
  return kept;
}

const overlap = (a: Covered, b: Covered) =>
  (a.off === null || a.off.window.due >= b.on.window.due) &&
  (b.off === null || b.off.window.due >= a.on.window.due);

function goesOn(growing: Growing, { on }: CoverFacts): CoverDay | null {
  const { crop, planting } = growing;
  if (crop.perennial && planting.inSince !== null) return null;
  if (on === "in place" || isRaised(planting.start)) return dayInPlace(growing);
  const up = upMilestone(growing);
  if (!reached(up)) return null;
  return {
    growing,
    window: window(plus(up.early, -1), up.usual, plus(up.usual, 4), "earlier"),
    grounds: up.grounds,
    stage: { day: up.usual, told: "Counted from when it is up, " },
  };
}

function dayInPlace(growing: Growing): CoverDay | null {
  const placed = inPlace(growing);
  if (!placed) return null;
  return {
    growing,
    window: window(placed.day, placed.day, plus(placed.day, 3), "earlier"),
    grounds: placed.grounds,
    stage: { day: placed.day, told: "As it goes into its place, " },
  };
}

/** What is raised has no coming up of its own outdoors: its days count from the day it is in its place. */
function seedling(growing: Growing): Milestone {
  const placed = inPlace(growing);
  return isRaised(growing.planting.start) && placed
    ? onDay(placed.day, placed.grounds)
    : upMilestone(growing);
}

const STAGES = {
  up: { of: seedling, told: "Counted from the last of the seedlings, " },
  flower: { of: flowerMilestone, told: "Counted from its first flower, " },
  "first harvest": { of: ripeMilestone, told: "Counted from its first harvest, " },
} as const;

/** By the last sowing under it that has such a day; null where none has. */
function comesOff(first: Growing, { off, offDays }: CoverFacts): CoverDay | null {
  const [least, most] = offDays.value;
  for (const sowing of [...sowingNumbers(first)].reverse()) {
    const growing = sowing === first.sowing ? first : { ...first, sowing };
    const stage = STAGES[off].of(growing);
    if (!reached(stage)) continue;
    const on = (days: number) => plus(stage.usual, days);
    return {
      growing,
      window: window(on(least), on(middle([least, most])), on(most + MAY_STAY_DAYS)),
      grounds: stage.grounds,
      stage: { day: stage.usual, told: STAGES[off].told },
    };
  }
  return null;
}

/** The cover with its end no later than the first flower that bees must reach; none where that opens before it is on. */
function inTime(covered: Omit<Covered, "forBees">): readonly Covered[] {
  const { growing, on, off } = covered;
  const flower = growing.crop.flowers?.forBees ? flowerMilestone(growing) : null;
  if (!flower || !reached(flower)) return [{ ...covered, forBees: false }];
  if (flower.usual <= on.window.due) return [];
  if (off && off.window.latest < flower.early) return [{ ...covered, forBees: false }];
  return [{ ...covered, off: beforeBees(growing, flower, on.window.due), forBees: true }];
}

/** Off as the first flower opens, on the early side, since it hides from who does not look. */
function beforeBees(growing: Growing, flower: Reached, on: Day): CoverDay {
  const { early, usual, grounds } = flower;
  return {
    growing,
    window: window(latest(plus(on, 1), early), usual, plus(usual, BEES_WAIT_DAYS), "earlier"),
    grounds,
    stage: { day: usual, told: "As its first flower opens, about " },
  };
}

/** The cover the plan asks for over a crop that the facts give none: on as it goes into its place, off for bees alone. */
function askedFor(growing: Growing): readonly Covered[] {
  const { under, inSince } = growing.planting;
  const thing = under.includes("net") ? "net" : under.includes("fabric") ? "fabric" : null;
  const on = dayInPlace(growing);
  if (thing === null || inSince !== null || !on) return [];
  return inTime({ growing, against: null, thing, suffix: "", on, off: null, offSign: null });
}

/**
 * A sowing's tasks with the cover that each is done under: those due after it is on and before it comes off. What puts it
 * on or takes it off, and what stands in no bed, is under none.
 */
export function underCover(growing: Growing, tasks: readonly Task[]): readonly Task[] {
  const { bed, without } = growing.planting;
  if (bed === null || without.includes("cover") || tasks.length === 0) return tasks;
  if (growing.crop.covers.length === 0 && growing.planting.under.length === 0) return tasks;
  const covers = coversOf(growing.sowing === 1 ? growing : { ...growing, sowing: 1 });
  if (covers.length === 0) return tasks;
  return tasks.map((task) => {
    const { due } = task.window;
    const over = covers.find(
      ({ on, off }) => due > on.window.due && (off === null || due < off.window.due),
    );
    return over ? { ...task, under: `${bed}|${over.against ?? over.thing}` } : task;
  });
}
