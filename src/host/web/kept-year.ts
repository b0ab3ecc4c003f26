import type { MonthJobs, Plan, ReviewedYear, Year, YearCourse } from "../../app/index.ts";
import type { Event } from "../../app/records.ts";
import { type Day, monthStart } from "../../base/index.ts";
import type { PlannedSeasons } from "../edge/engine.ts";
import { buildRecord, discardBuild } from "../store/build.ts";
import { allEvents } from "../store/events.ts";
import { loadGarden } from "../store/gardens.ts";
import { loadPlannedSeasons, storePlannedSeasons } from "../store/planned-seasons.ts";
import { loadReadPlan } from "../store/plans.ts";
import type { SqlStore } from "../store/sql.ts";
import { loadBaseline } from "../store/tasks.ts";
import {
  distrustYear,
  loadObservations,
  loadOutlines,
  loadSeasons,
  loadTaskOrder,
  loadTasks,
  type TaskPlace,
} from "../store/year.ts";
import { type GardenContext, isOfReadings, readingsOf } from "./garden-context.ts";

/** What pictures, frost tonight and room are made from. */
export function keptCourse(context: GardenContext): Promise<YearCourse> {
  return keptOrBuilt(context, courseIn);
}

/** What a year is looked back on from. */
export function keptYear(context: GardenContext): Promise<ReviewedYear & Pick<Year, "baseline">> {
  return keptOrBuilt(context, (sql, plans) => {
    const course = courseIn(sql, plans);
    const order = loadTaskOrder(sql, yearsOf(plans));
    const scheduled = order && loadOutlines(sql, order);
    return course && scheduled && { ...course, scheduled, baseline: loadBaseline(sql) };
  });
}

/** What a month's sheet is made from, the month by its first day. */
export function keptMonth(context: GardenContext, month: Day): Promise<MonthJobs> {
  return keptOrBuilt(context, (sql, plans) => {
    const order = loadTaskOrder(sql, yearsOf(plans));
    if (order === null) return null;
    const events = inScheduleOrder(allEvents(sql), order);
    const next = monthStart(month, 1);
    const shown = events.filter(({ day }) => day >= month && day < next);
    const wanted = new Set(shown.flatMap(({ tasks }) => tasks));
    const scheduled = loadTasks(
      sql,
      order.filter(([id]) => wanted.has(id)),
    );
    return scheduled && { plans, events, scheduled };
  });
}

/** What was planned for a year, stored the first time that it is asked for and built anew for other plans or other code. */
export function keptPlanned({ sql }: Pick<GardenContext, "sql">): PlannedSeasons {
  return (year, build) => {
    const stored = loadGarden(sql);
    const key = { year, of: stored === null ? "" : readingsOf(stored) };
    const kept = loadPlannedSeasons(sql, key);
    if (kept !== null) return kept;
    const built = build();
    storePlannedSeasons(sql, key, built);
    return built;
  };
}

type PartLoader<Part> = (sql: SqlStore, plans: readonly Plan[]) => Part | null;

/**
 * A part of the year as the last build stored it. Where that was a build of other plans or by other code, or the part can't be
 * read, the year is built first. Throws where that fails.
 */
async function keptOrBuilt<Part>(context: GardenContext, load: PartLoader<Part>): Promise<Part> {
  const kept = isOfThesePlans(context) ? (loadPart(context, load) ?? distrust(context)) : null;
  if (kept !== null) return kept;
  await context.buildNow();
  const built = loadPart(context, load);
  if (built === null) throw new Error("there is no year to show");
  return built;
}

/** Whether the last build was made from these readings of these plans by this code. What was said since is still to come. */
function isOfThesePlans({ sql, code }: GardenContext): boolean {
  const [stored, build] = [loadGarden(sql), buildRecord(sql)];
  return stored !== null && build.code === code && isOfReadings(build, stored);
}

function loadPart<Part>({ sql }: GardenContext, load: PartLoader<Part>): Part | null {
  const readings = loadGarden(sql)?.plans.map(({ year }) => loadReadPlan(sql, year)) ?? [];
  const plans = readings.flatMap((plan) => plan ?? []);
  return plans.length === 0 || plans.length < readings.length ? null : load(sql, plans);
}

/** Makes the year one that is owed anew and written whole. */
function distrust({ sql }: GardenContext): null {
  sql.transaction(() => {
    distrustYear(sql);
    discardBuild(sql);
  });
  return null;
}

function courseIn(sql: SqlStore, plans: readonly Plan[]): YearCourse | null {
  const seasons = loadSeasons(sql, yearsOf(plans));
  const observations = loadObservations(sql);
  return seasons && observations && { plans, observations, seasons };
}

const yearsOf = (plans: readonly Plan[]) => plans.map(({ year }) => year);

/** Events in the order of the first of their tasks, those without any last. */
function inScheduleOrder(events: readonly Event[], order: readonly TaskPlace[]): readonly Event[] {
  const ranks = new Map(order.map(([id], rank) => [id, rank]));
  const rankOf = ({ tasks }: Event) =>
    Math.min(...tasks.map((id) => ranks.get(id) ?? order.length), order.length);
  const ranked = events.map((event) => ({ event, rank: rankOf(event) }));
  return ranked.sort((a, b) => a.rank - b.rank).map(({ event }) => event);
}
