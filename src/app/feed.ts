import type { Day } from "../base/days/day.ts";
import { climateOf } from "../engine/climate/climate.ts";
import type { Anchors } from "../engine/growth/anchors.ts";
import { diaryAnchors } from "../engine/growth/diary-anchors.ts";
import type { SowingContext } from "../engine/growth/sowing-context.ts";
import { SHARED_PRACTICES, tasksOf } from "../engine/practices/all.ts";
import { haveReadyTasks } from "../engine/practices/have-ready.ts";
import { PASSES, type WholeGarden } from "../engine/practices/practice.ts";
import { sowingContextsOf } from "../engine/practices/repeat.ts";
import type { Task } from "../engine/practices/task.ts";
import { applyObservations } from "../engine/schedule/apply-observations.ts";
import { doneTasksOf } from "../engine/schedule/done.ts";
import { type Horizon, horizonOf } from "../engine/schedule/horizon.ts";
import { type Household, householdOf } from "../engine/schedule/household.ts";
import { publishedStateOf } from "../engine/schedule/published-state.ts";
import { scheduleTasks } from "../engine/schedule/schedule-tasks.ts";
import type { PublishedState, ScheduledTask } from "../engine/schedule/scheduled-task.ts";
import type { Load } from "../engine/schedule/session.ts";
import { withTaskAnchors } from "../engine/schedule/task-anchors.ts";
import { withMovedPlantings } from "../garden/diary/moved-plantings.ts";
import type { Observation } from "../garden/diary/observation.ts";
import { observationsIn } from "../garden/diary/parse.ts";
import type { Plan, Planting } from "../garden/model/plan.ts";
import { plantingRanks } from "../garden/plan/after.ts";
import { wholeGarden, withLinkedPlantings } from "../garden/plan/years.ts";
import { awayEvents } from "../views/away/events.ts";
import type { Event } from "../views/events/event.ts";
import { eventsOf } from "../views/events/events.ts";
import { seasonEvent } from "../views/events/open.ts";

export type { Horizon } from "../engine/schedule/horizon.ts";

/** Each task's due day, by id, on this site in a mean year. */
export type Baseline = Readonly<Record<string, Day>>;

/**
 * A garden: its years' plans in year order, not empty, all of one garden id. `usual` is what `usualOf` gave for these
 * plans, where that is at hand; it costs as much as a telling and changes only when a plan does.
 */
export type Garden = {
  readonly id: string;
  readonly plans: readonly Plan[];
  readonly baseline?: Baseline;
};

/** What a garden is told: every task on its day, the events made of them, and what to remember for the next time. */
export type Schedule = {
  readonly scheduled: readonly ScheduledTask[];
  readonly events: readonly Event[];
  readonly publishedState: PublishedState;
};

/** Today as the core knows it, at an instant [ms since 1970 UTC], in the garden's own zone. */
export function horizonAt(garden: Garden, instant: number): Horizon {
  return horizonOf(garden.plans, instant);
}

/**
 * The whole job: each year's plan in three passes, then words. Equal input gives equal output at any instant
 * and in any process time zone. `standing` is what the last telling gave, or empty.
 */
export function buildSchedule(
  garden: Garden,
  horizon: Horizon,
  publishedState: PublishedState,
): Schedule {
  const observations = observationsIn(garden.plans);
  const plans = withMovedPlantings(garden.plans, observations);
  const baseline = garden.baseline ?? buildBaseline(garden);
  const { scheduled, wholes } = scheduleYears(withLinkedPlantings(plans), {
    observations,
    publishedState,
    baseline,
  });
  const shown = scheduled.filter((each) => each.day >= horizon.firstDay);
  const plan = wholeGarden(plans);
  const events = [
    ...eventsOf(shown, { plan, publishedState, openDays: horizon.openDays }),
    ...awayEvents({ plans, scheduled, observations, wholes }, horizon.firstDay),
    seasonEvent(plan, horizon.firstDay),
  ];
  return {
    scheduled,
    events,
    publishedState: publishedStateOf(scheduled, new Set(events.map(({ key }) => key))),
  };
}

/** The same years without diary, absences and anything told before: what is usual here. */
export function buildBaseline(garden: Garden): Baseline {
  const mean = withLinkedPlantings(garden.plans).map((plan) => ({ ...plan, away: [] }));
  const { scheduled } = scheduleYears(mean, { observations: [], publishedState: {}, baseline: {} });
  return Object.fromEntries(scheduled.map(({ task }) => [task.id, task.window.due]));
}

/** What years are told by: the diary, what was told before, and each task's usual due day. */
type ScheduleInput = {
  readonly observations: readonly Observation[];
  readonly publishedState: PublishedState;
  readonly baseline: Baseline;
};

/** Each year's plan in year order; people have their hours but once, and what ended last year frees its place this year. */
function scheduleYears(plans: readonly Plan[], input: ScheduleInput): ScheduledYears {
  const load: Load = new Map();
  const scheduled: ScheduledTask[] = [];
  const doneBefore = new Map<string, Day>();
  const wholes = new Map<number, WholeGarden>();
  let anchors: Anchors = new Map();
  for (const plan of plans) {
    const year = scheduleYear(plan, { ...input, load, anchors, doneBefore });
    scheduled.push(...year.scheduled);
    for (const { task, done } of year.scheduled) if (done) doneBefore.set(task.id, done.day);
    wholes.set(plan.year, year.whole);
    anchors = year.whole.anchors;
  }
  return { scheduled, wholes };
}

/** What was given, and what the years before have come to. */
type YearInput = ScheduleInput & {
  readonly load: Load;
  readonly anchors: Anchors;
  readonly doneBefore: ReadonlyMap<string, Day>;
};

/** Every year's tasks on their days, and each year as it grows. */
type ScheduledYears = {
  readonly scheduled: readonly ScheduledTask[];
  readonly wholes: ReadonlyMap<number, WholeGarden>;
};

type ScheduledYear = { readonly scheduled: readonly ScheduledTask[]; readonly whole: WholeGarden };

/** Three passes a chain: what starts a clock, what moves plants out, the rest; each scheduled day anchors the next. */
function scheduleYear(plan: Plan, input: YearInput): ScheduledYear {
  const { observations } = input;
  const household = householdOf(plan.people, plan.away);
  const { around } = household;
  const climate = climateOf(plan, observations);
  const scheduler = taskSchedulerFor(plan, household, input);
  const contextsByPlanting = new Map<Planting, readonly SowingContext[]>();
  for (const chain of plantingRanks(plan.plantings))
    for (const pass of PASSES) {
      const known = { climate, anchors: scheduler.anchors(), observations, around };
      for (const planting of chain)
        contextsByPlanting.set(planting, sowingContextsOf(planting, plan, known));
      const contexts = chain.flatMap((planting) => contextsByPlanting.get(planting) ?? []);
      scheduler.schedule(tasksOf(contexts, pass));
    }
  const contexts = plan.plantings.flatMap((planting) => contextsByPlanting.get(planting) ?? []);
  const whole = {
    plan,
    climate,
    contexts,
    anchors: scheduler.anchors(),
    observations,
    around,
  };
  scheduler.schedule(SHARED_PRACTICES.flatMap((practice) => practice.tasks(whole)));
  scheduler.schedule(haveReadyTasks(plan.year, scheduler.scheduled, contexts));
  return { scheduled: scheduler.scheduled, whole: { ...whole, anchors: scheduler.anchors() } };
}

/** Tasks put on their days, one lot after another, and the anchors that the days have set by then. */
type TaskScheduler = {
  readonly schedule: (tasks: readonly Task[]) => void;
  readonly scheduled: readonly ScheduledTask[];
  readonly anchors: () => Anchors;
};

function taskSchedulerFor(plan: Plan, household: Household, input: YearInput): TaskScheduler {
  const { observations, anchors: before, ...rest } = input;
  const days = new Map<string, Day>();
  const scheduled: ScheduledTask[] = [];
  let anchors: Anchors = new Map([...before, ...diaryAnchors(plan.plantings, observations)]);
  const schedule = (tasks: readonly Task[]) => {
    const done = doneTasksOf(tasks, observations);
    const now = scheduleTasks(applyObservations(tasks, observations, done), {
      ...rest,
      household,
      done,
      days,
    });
    scheduled.push(...now);
    anchors = withTaskAnchors(anchors, now);
  };
  return { schedule, scheduled, anchors: () => anchors };
}
