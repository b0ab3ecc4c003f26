import type { Day } from "../base/days/day.ts";
import { climateOf } from "../engine/climate/climate.ts";
import type { Anchors } from "../engine/growth/anchors.ts";
import type { Growing } from "../engine/growth/growing.ts";
import { remembered } from "../engine/growth/remembered.ts";
import { SHARED_PRACTICES, tasksOf } from "../engine/practices/all.ts";
import { haveReady } from "../engine/practices/have-ready.ts";
import { PASSES, type WholeGarden } from "../engine/practices/practice.ts";
import { growingsOf } from "../engine/practices/repeat.ts";
import type { Task } from "../engine/practices/task.ts";
import { anchored } from "../engine/schedule/anchored.ts";
import { remember } from "../engine/schedule/calm.ts";
import { doneOf } from "../engine/schedule/done.ts";
import { type Horizon, horizonOf } from "../engine/schedule/horizon.ts";
import { type Household, householdOf } from "../engine/schedule/household.ts";
import { place } from "../engine/schedule/place.ts";
import type { Placed, Standing } from "../engine/schedule/placed.ts";
import { asSaid } from "../engine/schedule/said.ts";
import type { Load } from "../engine/schedule/session.ts";
import type { Fact } from "../garden/diary/fact.ts";
import { asMoved } from "../garden/diary/moved.ts";
import { understood } from "../garden/diary/understand.ts";
import type { Plan, Planting } from "../garden/model/plan.ts";
import { chains } from "../garden/plan/after.ts";
import { joined, wholeGarden } from "../garden/plan/years.ts";
import { awayEvents } from "../views/away/events.ts";
import type { Event } from "../views/events/event.ts";
import { eventsOf } from "../views/events/events.ts";
import { seasonEvent } from "../views/events/open.ts";

export type { Horizon } from "../engine/schedule/horizon.ts";

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
  const plan = wholeGarden(plans);
  const events = [
    ...eventsOf(shown, { plan, standing, openDays: horizon.openDays }),
    ...awayEvents({ plans, placed, facts, wholes }, horizon.firstDay),
    seasonEvent(plan, horizon.firstDay),
  ];
  return { placed, events, standing: remember(placed, new Set(events.map(({ key }) => key))) };
}

/** The same years without diary, absences and anything told before: what is usual here. */
export function usualOf(garden: Garden): Usual {
  const mean = joined(garden.plans).map((plan) => ({ ...plan, away: [] }));
  const { placed } = oneAfterAnother(mean, { facts: [], standing: {}, usual: {} });
  return Object.fromEntries(placed.map(({ task }) => [task.id, task.window.due]));
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
    anchors = year.whole.anchors;
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

type Year = { readonly placed: readonly Placed[]; readonly whole: WholeGarden };

/** Three passes a chain: what starts a clock, what moves plants out, the rest; each placed day anchors the next. */
function passes(plan: Plan, after: After): Year {
  const { facts } = after;
  const household = householdOf(plan.people, plan.away);
  const { around } = household;
  const climate = climateOf(plan, facts);
  const putting = placingIn(plan, household, after);
  const grown = new Map<Planting, readonly Growing[]>();
  for (const chain of chains(plan.plantings))
    for (const pass of PASSES) {
      const known = { climate, anchors: putting.anchors(), facts, around };
      for (const planting of chain) grown.set(planting, growingsOf(planting, plan, known));
      const growings = chain.flatMap((planting) => grown.get(planting) ?? []);
      putting.put(tasksOf(growings, pass));
    }
  const growings = plan.plantings.flatMap((planting) => grown.get(planting) ?? []);
  const whole = { plan, climate, growings, anchors: putting.anchors(), facts, around };
  putting.put(SHARED_PRACTICES.flatMap((practice) => practice.tasks(whole)));
  putting.put(haveReady(plan.year, putting.placed, growings));
  return { placed: putting.placed, whole: { ...whole, anchors: putting.anchors() } };
}

/** Tasks put on their days, one lot after another, and the anchors that the days have set by then. */
type Putting = {
  readonly put: (tasks: readonly Task[]) => void;
  readonly placed: readonly Placed[];
  readonly anchors: () => Anchors;
};

function placingIn(plan: Plan, household: Household, after: After): Putting {
  const { facts, anchors: before, ...given } = after;
  const days = new Map<string, Day>();
  const placed: Placed[] = [];
  let anchors: Anchors = new Map([...before, ...remembered(plan.plantings, facts)]);
  const put = (tasks: readonly Task[]) => {
    const done = doneOf(tasks, facts);
    const now = place(asSaid(tasks, facts, done), { ...given, household, done, days });
    placed.push(...now);
    anchors = anchored(anchors, now);
  };
  return { put, placed, anchors: () => anchors };
}
