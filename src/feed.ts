import { awayEvents } from "./away/events.ts";
import { climateOf } from "./climate/climate.ts";
import type { Day } from "./days/day.ts";
import type { Fact } from "./diary/fact.ts";
import { asMoved } from "./diary/moved.ts";
import { understood } from "./diary/understand.ts";
import type { Anchors } from "./growth/anchors.ts";
import type { Growing } from "./growth/growing.ts";
import { remembered } from "./growth/remembered.ts";
import type { Plan, Planting } from "./plan/plan.ts";
import { followed } from "./plan/years.ts";
import { PRACTICES, SHARED_PRACTICES } from "./practices/all.ts";
import { underCover } from "./practices/covered.ts";
import { haveReady } from "./practices/have-ready.ts";
import { PASSES, type Pass, type WholeGarden } from "./practices/practice.ts";
import { growingsOf } from "./practices/repeat.ts";
import { shareLadders } from "./practices/set-out.ts";
import type { Task } from "./practices/task.ts";
import { anchored } from "./schedule/anchored.ts";
import { daysNamed } from "./schedule/calm.ts";
import { doneOf } from "./schedule/done.ts";
import { type Horizon, horizonOf, planOn } from "./schedule/horizon.ts";
import { householdOf } from "./schedule/household.ts";
import { place } from "./schedule/place.ts";
import type { LastTold, Placed, Standing } from "./schedule/placed.ts";
import { asSaid } from "./schedule/said.ts";
import type { Load } from "./schedule/session.ts";
import type { Event } from "./words/event.ts";
import { eventsOf } from "./words/events.ts";
import { seasonEvent } from "./words/open.ts";

export type { Horizon } from "./schedule/horizon.ts";

/** Each task's due day, by id, on this site in a mean year. */
export type Usual = Readonly<Record<string, Day>>;

/**
 * A garden: its years' plans in year order, not empty, all of one garden id. `usual` is what `usualOf` gave for these
 * plans, where that is at hand; it costs as much as a telling and changes only when a plan does.
 */
export type Garden = {
  readonly id: string;
  readonly plans: readonly Plan[];
  readonly usual?: Usual;
};

/** What a garden is told: every task on its day, the events made of them, and what to remember for the next time. */
export type Told = {
  readonly placed: readonly Placed[];
  readonly events: readonly Event[];
  readonly standing: Standing;
};

/** Today as the core knows it, at an instant [ms since 1970 UTC], in the garden's own zone. */
export function horizonAt(garden: Garden, instant: number): Horizon {
  return horizonOf(garden.plans, instant);
}

/**
 * The whole job: each year's plan in three passes, then words. Equal input gives equal output at any instant
 * and in any process time zone. `standing` is what the last telling gave, or empty.
 */
export function tell(garden: Garden, horizon: Horizon, standing: Standing): Told {
  const facts = understood(garden.plans);
  const plans = asMoved(garden.plans, facts);
  const usual = garden.usual ?? usualOf(garden);
  const { placed, wholes } = oneAfterAnother(joined(plans), { facts, standing, usual });
  const shown = placed.filter((each) => each.day >= horizon.firstDay);
  const plan = wholeGarden(plans, horizon.firstDay);
  const events = [
    ...eventsOf(shown, { plan, standing, openDays: horizon.openDays }),
    ...awayEvents({ plans, placed, facts, wholes }, horizon.firstDay),
    seasonEvent(plan, horizon.firstDay),
  ];
  return { placed, events, standing: remember(placed, events) };
}

/** The same years without diary, absences and anything told before: what is usual here. */
export function usualOf(garden: Garden): Usual {
  const mean = joined(garden.plans).map((plan) => ({ ...plan, away: [] }));
  const { placed } = oneAfterAnother(mean, { facts: [], standing: {}, usual: {} });
  return Object.fromEntries(placed.map(({ task }) => [task.id, task.window.due]));
}

/** Plans in which each planting that follows one of an earlier year names it by its key. */
function joined(plans: readonly Plan[]): readonly Plan[] {
  const named = (planting: Planting) =>
    planting.after === null
      ? planting
      : { ...planting, after: followed(planting, plans)?.key ?? planting.after };
  return plans.map((plan) => ({ ...plan, plantings: plan.plantings.map(named) }));
}

/** What years are told by: the diary, what was told before, and each task's usual due day. */
type Given = {
  readonly facts: readonly Fact[];
  readonly standing: Standing;
  readonly usual: Usual;
};

/** Each year's plan in year order; people have their hours but once, and what ended last year frees its place this year. */
function oneAfterAnother(plans: readonly Plan[], given: Given): Years {
  const load: Load = new Map();
  const placed: Placed[] = [];
  const doneBefore = new Map<string, Day>();
  const wholes = new Map<number, WholeGarden>();
  let anchors: Anchors = new Map();
  for (const plan of plans) {
    const year = passes(plan, { ...given, load, anchors, doneBefore });
    placed.push(...year.placed);
    for (const { task, done } of year.placed) if (done) doneBefore.set(task.id, done.day);
    wholes.set(plan.year, year.whole);
    anchors = year.anchors;
  }
  return { placed, wholes };
}

/** What was given, and what the years before have come to. */
type After = Given & {
  readonly load: Load;
  readonly anchors: Anchors;
  readonly doneBefore: ReadonlyMap<string, Day>;
};

/** Every year's tasks on their days, and each year as it grows. */
type Years = {
  readonly placed: readonly Placed[];
  readonly wholes: ReadonlyMap<number, WholeGarden>;
};

type Year = {
  readonly placed: readonly Placed[];
  readonly anchors: Anchors;
  readonly whole: WholeGarden;
};

/** Three passes a chain: what starts a clock, what moves plants out, the rest; each placed day anchors the next. */
function passes(
  plan: Plan,
  { facts, standing, usual, load, anchors: before, doneBefore }: After,
): Year {
  const household = householdOf(plan.people, plan.away);
  const climate = climateOf(plan, facts);
  let anchors: Anchors = new Map([...before, ...remembered(plan.plantings, facts)]);
  const days = new Map<string, Day>();
  const placed: Placed[] = [];
  const put = (tasks: readonly Task[]) => {
    const done = doneOf(tasks, facts);
    const now = place(asSaid(tasks, facts, done), {
      household,
      standing,
      done,
      usual,
      doneBefore,
      load,
      days,
    });
    placed.push(...now);
    anchors = anchored(anchors, now);
  };
  const { around } = household;
  const growing = (planting: Planting) =>
    growingsOf(planting, plan, { climate, anchors, facts, around });
  const grown = new Map<Planting, readonly Growing[]>();
  for (const chain of chains(plan.plantings))
    for (const pass of PASSES) {
      const now = chain.map((planting) => [planting, growing(planting)] as const);
      for (const [planting, sowings] of now) grown.set(planting, sowings);
      put(
        tasksOf(
          now.flatMap(([, sowings]) => sowings),
          pass,
        ),
      );
    }
  const growings = plan.plantings.flatMap((planting) => grown.get(planting) ?? []);
  const whole = { plan, climate, growings, anchors, facts, around };
  put(SHARED_PRACTICES.flatMap((practice) => practice.tasks(whole)));
  put(haveReady(plan.year, placed, growings));
  return { placed, anchors, whole: { ...whole, anchors } };
}

/** Plantings by how many they stand behind: first those that follow none of this plan's, then those that follow these. */
function chains(plantings: readonly Planting[]): readonly (readonly Planting[])[] {
  const byKey = new Map(plantings.map((planting) => [planting.key, planting]));
  const behind = (planting: Planting): number => {
    const before = planting.after === null ? undefined : byKey.get(planting.after);
    return before ? 1 + behind(before) : 0;
  };
  const ranks: Planting[][] = [];
  for (const planting of plantings) {
    const rank = behind(planting);
    ranks[rank] = [...(ranks[rank] ?? []), planting];
  }
  return ranks.filter((rank) => rank !== undefined);
}

/** A pass's tasks, those practices left out that a planting drops; plants that can share a ladder get one day. */
function tasksOf(growings: readonly Growing[], pass: Pass): readonly Task[] {
  const practices = PRACTICES.filter((practice) => practice.pass === pass);
  const tasks: Task[] = [];
  for (const growing of growings) {
    const { without } = growing.planting;
    const told = practices.filter(({ name }) => !without.includes(name));
    const own = told.flatMap((practice) => practice.tasks(growing));
    tasks.push(...(pass === "rest" ? underCover(growing, own) : own));
  }
  return pass === "set out" ? shareLadders(tasks) : tasks;
}

/** The newest plan with every year's beds and people, for words that name them. */
function wholeGarden(plans: readonly Plan[], day: Day): Plan {
  const newest = plans[plans.length - 1] ?? planOn(plans, day);
  const byKey = <T extends { readonly key: string }>(all: readonly T[]) => [
    ...new Map(all.map((each) => [each.key, each])).values(),
  ];
  return {
    ...newest,
    beds: byKey(plans.flatMap((plan) => plan.beds)),
    people: byKey(plans.flatMap((plan) => plan.people)),
  };
}

/** What is kept of a telling, by task. */
function remember(placed: readonly Placed[], events: readonly Event[]): Standing {
  const leads = new Set(events.map((event) => event.key));
  const standing: Record<string, LastTold> = {};
  for (const { task, day, window, people, note } of placed) {
    const { id, say } = task;
    standing[id] = { day, window, people, days: daysNamed(say), lead: leads.has(id), note };
  }
  return standing;
}
