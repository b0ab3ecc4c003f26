import type { TaskOutline, Year } from "../../app/index.ts";
import { isoOf } from "../../base/index.ts";
import { forgetFingerprints, loadJson, storeChangedTexts } from "./changed-texts.ts";
import type { SqlStore } from "./sql.ts";
import {
  detailsOf,
  joinHalves,
  outlineOf,
  type TaskDetails,
  type TaskOnDay,
} from "./task-halves.ts";

/** What is stored of a year beside plans, tasks' cards and events, which have rows of their own. */
export type StoredYear = Pick<Year, "observations" | "seasons" | "scheduled">;

/** A task's id, and the month in which it is scheduled (`2027-05`). */
export type TaskPlace = readonly [id: string, month: string];

const UNDER = "year/";
const OBSERVATIONS = `${UNDER}observations`;
const seasonName = (year: number) => `${UNDER}${year}/season`;
const orderName = (year: number) => `${UNDER}${year}/order`;
const outlinesName = (year: number, month: string) => `${UNDER}${year}/outlines/${month}`;
const detailsName = (year: number, month: string) => `${UNDER}${year}/details/${month}`;

/**
 * Stores a year in pieces: the diary's observations, and for each plan its season, its tasks month by month in two
 * halves, and their order.
 * Only pieces that have changed are written, so a closed year is not.
 */
export function storeYear(sql: SqlStore, { observations, seasons, scheduled }: StoredYear): void {
  const texts = new Map([[OBSERVATIONS, JSON.stringify(observations)]]);
  for (const season of seasons) {
    const own = scheduled.filter(({ task }) => task.id.startsWith(`${season.year}/`));
    texts.set(seasonName(season.year), JSON.stringify(season));
    texts.set(orderName(season.year), JSON.stringify(own.map(placeOf)));
    for (const [month, tasks] of byMonth(own)) {
      texts.set(outlinesName(season.year, month), JSON.stringify(tasks.map(outlineOf)));
      texts.set(detailsName(season.year, month), JSON.stringify(tasks.map(detailsOf)));
    }
  }
  storeChangedTexts(sql, UNDER, texts);
}

function byMonth(scheduled: readonly TaskOnDay[]): ReadonlyMap<string, readonly TaskOnDay[]> {
  const months = new Map<string, TaskOnDay[]>();
  for (const each of scheduled) {
    const month = monthOf(each);
    const known = months.get(month);
    if (known) known.push(each);
    else months.set(month, [each]);
  }
  return months;
}

const monthOf = ({ day }: TaskOnDay) => isoOf(day).slice(0, 7);

const placeOf = (scheduled: TaskOnDay): TaskPlace => [scheduled.task.id, monthOf(scheduled)];

/** Makes the next build write every piece of the year again, since one can't be read. */
export function distrustYear(sql: SqlStore): void {
  forgetFingerprints(sql, UNDER);
}

/** The diary's observations; null where they can't be read. */
export function loadObservations(sql: SqlStore): Year["observations"] | null {
  return loadJson(sql, OBSERVATIONS);
}

/** The seasons of those years, in their order; null where one can't be read. */
export function loadSeasons(sql: SqlStore, years: readonly number[]): Year["seasons"] | null {
  return all(years.map((year) => loadJson<Year["seasons"][number]>(sql, seasonName(year))));
}

/** Every task of those years in the order of the schedule, with its month; null where that can't be read. */
export function loadTaskOrder(
  sql: SqlStore,
  years: readonly number[],
): readonly TaskPlace[] | null {
  return (
    all(years.map((year) => loadJson<readonly TaskPlace[]>(sql, orderName(year))))?.flat() ?? null
  );
}

/** Outlines of the tasks in those places, in their order; null where one can't be read. Only their months are read. */
export function loadOutlines(
  sql: SqlStore,
  places: readonly TaskPlace[],
): readonly TaskOutline[] | null {
  return inMonths(places, ({ year, month }) => loadJson(sql, outlinesName(year, month)));
}

/** The same tasks whole. */
export function loadTasks(
  sql: SqlStore,
  places: readonly TaskPlace[],
): readonly TaskOnDay[] | null {
  return inMonths(places, ({ year, month }) => {
    const outlines = loadJson<readonly TaskOutline[]>(sql, outlinesName(year, month));
    const details = loadJson<readonly TaskDetails[]>(sql, detailsName(year, month));
    if (outlines === null || details === null) return null;
    return outlines.flatMap((outline, at) => {
      const half = details[at];
      return half ? [joinHalves(outline, half)] : [];
    });
  });
}

/** A month of the tasks of one plan's year. */
type PlanMonth = { readonly year: number; readonly month: string };

/** What stands in those places, in their order, each month read once; null where a month or one of its tasks is missing. */
function inMonths<Scheduled extends TaskOutline>(
  places: readonly TaskPlace[],
  load: (month: PlanMonth) => readonly Scheduled[] | null,
): readonly Scheduled[] | null {
  const wanted = new Map(
    places.map(([id, month]) => {
      const year = Number.parseInt(id, 10);
      return [`${year} ${month}`, { year, month }];
    }),
  );
  const months = all([...wanted.values()].map(load));
  const tasks = new Map(months?.flat().map((each) => [each.task.id, each]));
  return months && all(places.map(([id]) => tasks.get(id) ?? null));
}

/** All of some values; null where one is. */
function all<Value>(values: readonly (Value | null)[]): readonly Value[] | null {
  const there = values.flatMap((value) => (value === null ? [] : [value]));
  return there.length === values.length ? there : null;
}
