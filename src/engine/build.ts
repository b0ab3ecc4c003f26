import type { Day } from "../base/index.ts";
import {
  type Observation,
  observationsIn,
  withChangedPlantings,
  withLinkedPlantings,
} from "../garden/index.ts";
import {
  type KnownWeather,
  type Plan,
  type Planting,
  plantingRanks,
} from "../garden/model/index.ts";
import { plantingRecordsOf } from "./beds/lives.ts";
import { wateringWeeksOf } from "./beds/watering-weeks.ts";
import { type ClimateData, climateDataOf, climateFrom } from "./climate/climate.ts";
import { driftK } from "./climate/drift.ts";
import { observedWeatherOf } from "./climate/observed-weather.ts";
import type { Anchors } from "./growth/anchors.ts";
import { diaryAnchors, withLosses } from "./growth/diary-anchors.ts";
import type { SeasonSoFar, SowingContext } from "./growth/sowing-context.ts";
import { PRACTICES, sharedTasksOf, type Task, tasksOf } from "./practices/all.ts";
import { haveReadyTasks } from "./practices/have-ready.ts";
import { PASSES, type WholeGarden } from "./practices/practice.ts";
import { sowingContextsOf } from "./practices/repeat.ts";
import { sayRough } from "./practices/rough-dates.ts";
import { toldOnOf } from "./practices/told-on.ts";
import { applyObservations } from "./schedule/apply-observations.ts";
import { doneTasksOf } from "./schedule/done.ts";
import type { Horizon } from "./schedule/horizon.ts";
import { type Household, householdOf } from "./schedule/household.ts";
import { tasksBySubject } from "./schedule/planting-tasks.ts";
import { scheduleTasks } from "./schedule/schedule-tasks.ts";
import type { PublishedState, ScheduledTask } from "./schedule/scheduled-task.ts";
import type { Load } from "./schedule/session.ts";
import { withSownUnsaid } from "./schedule/sown-unsaid.ts";
import { withTaskAnchors } from "./schedule/task-anchors.ts";
import { withWeatherReason } from "./schedule/weather-reason.ts";
import type { Baseline, Garden, Season, Year } from "./year.ts";

/**
 * The whole calculation: each plan in three passes, every task on its day, and the course of each planting. Equal input
 * gives an equal year at any instant and in any process time zone. `published` is what was last published of the
 * garden, or empty.
 */
export function buildYear(garden: Garden, horizon: Horizon, published: PublishedState): Year {
  const { id, plans } = garden;
  const observations = observationsIn(plans, PRACTICES);
  const baseline = garden.baseline ?? buildBaseline(garden);
  const linked = withLinkedPlantings(withChangedPlantings(plans, observations));
  const built = scheduleSeasons(linked, {
    ...{ observations, published, baseline, weather: garden.weather ?? null },
  });
  const scheduled = built.flatMap((season) => season.scheduled);
  const seasons = seasonsOf(built, scheduled, observations);
  return { garden: id, plans, horizon, observations, baseline, published, scheduled, seasons };
}

/** The same plans without diary, absences, this year's weather and anything published before: what is usual here. */
export function buildBaseline(garden: Garden): Baseline {
  const mean = withLinkedPlantings(garden.plans).map((plan) => ({ ...plan, away: [] }));
  const built = scheduleSeasons(mean, {
    ...{ observations: [], published: {}, baseline: {}, weather: null },
  });
  const tasks = built.flatMap(({ scheduled }) => scheduled.map(({ task }) => task));
  return Object.fromEntries(tasks.map(({ id, window }) => [id, window.due]));
}

/** What plans are scheduled by: the diary, what was published before, each task's usual due day, and this year's weather. */
type ScheduleInput = {
  readonly observations: readonly Observation[];
  readonly published: PublishedState;
  readonly baseline: Baseline;
  readonly weather: KnownWeather | null;
};

/** A plan's tasks on their days, its garden as it grows after the last pass, and all anchors by then. */
type ScheduledPlan = {
  readonly scheduled: readonly ScheduledTask[];
  readonly whole: WholeGarden;
  readonly anchors: Anchors;
  readonly climate: ClimateData;
};

/**
 * Each plan in year order; people's hours are given out only once, and a place that became free last year is free this
 * year.
 */
function scheduleSeasons(plans: readonly Plan[], input: ScheduleInput): readonly ScheduledPlan[] {
  const load: Load = new Map();
  const built: ScheduledPlan[] = [];
  const doneBefore = new Map<string, Day>();
  let anchors: Anchors = new Map();
  for (const plan of plans) {
    const season = scheduleSeason(plan, { ...input, load, anchors, doneBefore });
    built.push(season);
    for (const { task, done } of season.scheduled) if (done) doneBefore.set(task.id, done.day);
    anchors = season.anchors;
  }
  return built;
}

/** The given input, and the results of the years before. */
type SeasonInput = ScheduleInput & {
  readonly load: Load;
  readonly anchors: Anchors;
  readonly doneBefore: ReadonlyMap<string, Day>;
};

/**
 * Three passes for each rank: what starts a clock, what moves plants out, the rest; each scheduled day anchors the
 * next.
 */
function scheduleSeason(plan: Plan, input: SeasonInput): ScheduledPlan {
  const { observations } = input;
  const household = householdOf(plan.people, plan.away);
  const { around } = household;
  const data = climateDataOf(plan, observations, observedWeatherOf(input.weather, plan.site));
  const climate = climateFrom(data);
  const soFar = seasonSoFar(input);
  const scheduler = taskSchedulerFor(plan, household, input);
  const contextsByPlanting = new Map<Planting, readonly SowingContext[]>();
  for (const chain of plantingRanks(plan.plantings))
    for (const pass of PASSES) {
      const known = { climate, anchors: scheduler.anchors(), observations, around, soFar };
      for (const planting of chain)
        contextsByPlanting.set(planting, sowingContextsOf(planting, plan, known));
      const contexts = chain.flatMap((planting) => contextsByPlanting.get(planting) ?? []);
      scheduler.schedule(sayRough(tasksOf(contexts, pass), climate), contexts);
    }
  const contexts = plan.plantings.flatMap((planting) => contextsByPlanting.get(planting) ?? []);
  const whole = { plan, climate, contexts, anchors: scheduler.anchors(), observations, around };
  scheduler.schedule(sayRough(sharedTasksOf(whole), climate));
  scheduler.schedule(haveReadyTasks(plan.year, scheduler.scheduled, contexts));
  const drift = input.weather && driftK(data, input.weather.asOf);
  const scheduled = scheduler.scheduled.map((each) => withWeatherReason(each, drift));
  return { scheduled, whole, anchors: scheduler.anchors(), climate: data };
}

function seasonSoFar({ weather, published }: ScheduleInput): SeasonSoFar | null {
  return weather && { asOf: weather.asOf, toldOn: (task) => published[task]?.day ?? null };
}

/** Tasks put on their days, one group after another, and the anchors that the days have set by then. */
type TaskScheduler = {
  /** `contexts` are those of the tasks, whose texts are told anew where a sowing comes on another day. */
  readonly schedule: (tasks: readonly Task[], contexts?: readonly SowingContext[]) => void;
  readonly scheduled: readonly ScheduledTask[];
  readonly anchors: () => Anchors;
};

function taskSchedulerFor(plan: Plan, household: Household, input: SeasonInput): TaskScheduler {
  const { observations, anchors: before, published, weather } = input;
  const { load, baseline, doneBefore } = input;
  const days = new Map<string, Day>();
  const scheduled: ScheduledTask[] = [];
  let anchors: Anchors = new Map([...before, ...diaryAnchors(plan.plantings, observations)]);
  const schedule = (tasks: readonly Task[], contexts: readonly SowingContext[] = []) => {
    const said = doneTasksOf(tasks, observations);
    const done = withSownUnsaid(said, tasks, { observations, contexts, household });
    const now = scheduleTasks(applyObservations(tasks, observations, done, anchors), {
      ...{ load, baseline, doneBefore },
      ...{ publishedState: published, weatherAsOf: weather?.asOf ?? null },
      household,
      done,
      days,
      toldOn: toldOnOf(contexts),
    });
    scheduled.push(...now);
    anchors = withLosses(withTaskAnchors(anchors, now), observations);
  };
  return { schedule, scheduled, anchors: () => anchors };
}

/** The course of each plan's plantings, once the tasks of all years have their days. */
function seasonsOf(
  built: readonly ScheduledPlan[],
  scheduled: readonly ScheduledTask[],
  observations: readonly Observation[],
): readonly Season[] {
  const plantings = built.flatMap(({ whole }) => whole.plan.plantings);
  const seen = diaryAnchors(plantings, observations);
  const anchors = withLosses(withTaskAnchors(seen, scheduled), observations);
  const tasks = tasksBySubject(scheduled);
  return built.map(({ whole, climate }) => ({
    year: whole.plan.year,
    climate,
    plantings: plantingRecordsOf({
      ...whole,
      anchors,
      tasksOf: (planting) => tasks.get(planting) ?? [],
    }),
    wateringWeeks: whole.plan.away.length > 0 ? wateringWeeksOf(whole) : [],
  }));
}
