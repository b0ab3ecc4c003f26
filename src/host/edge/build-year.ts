import { type Event, updateFormerTasks } from "../../app/records.ts";
import { buildRecord, storeBuildRecord } from "../store/build.ts";
import { diaryLines, newestAnswer } from "../store/diary.ts";
import { storeDiaryReport } from "../store/diary-report.ts";
import {
  formerTasks,
  inDayOrder,
  readableEvents,
  storedEvents,
  storeEvents,
  storeFormerTasks,
} from "../store/events.ts";
import { loadGarden, type StoredGarden } from "../store/gardens.ts";
import { type MovedTask, storeMoved } from "../store/moved.ts";
import {
  loadReadPlan,
  type PlanTexts,
  savedPlan,
  storeReading,
  wholeVersionBefore,
} from "../store/plans.ts";
import {
  type StoredTasks,
  storedTasks,
  storeTasks,
  type TaskRow,
  taskCards,
  tasksById,
} from "../store/tasks.ts";
import { storeYear } from "../store/year.ts";
import {
  baselineKey,
  buildInput,
  copyDueAt,
  type GardenContext,
  weatherDueAt,
} from "../web/garden-context.ts";
import { changesBetween } from "./changes-between.ts";
import type { BuiltYear, Engine } from "./engine.ts";

/**
 * Builds the year from plans and diary and stores it, whole or not at all, with what moved since the last build and the alarm
 * for the turn of the day. Texts that an older code read are read anew first. Gives the events as they are stored; null where
 * there is no garden, and nothing is done.
 */
export function buildYear(context: GardenContext, engine: Engine): readonly Event[] | null {
  const { sql } = context;
  readAnew(context, engine);
  const stored = loadGarden(sql);
  if (stored === null) return null;
  const tasks = storedTasks(sql);
  const built = engine.build(buildInput(context, stored, tasks));
  sql.transaction(() => storeBuild(context, { stored, tasks }, built));
  return inDayOrder(built.events);
}

/** Reads the texts again that an older code read, or whose reading is lost. One that no longer passes keeps its old reading. */
function readAnew({ sql, code }: GardenContext, engine: Engine): void {
  const stored = loadGarden(sql);
  for (const { year, version, readBy } of stored?.plans ?? []) {
    const had = loadReadPlan(sql, year);
    const saved = had !== null && readBy === code ? null : savedPlan(sql, year);
    if (stored === null || saved === null) continue;
    const { file } = saved;
    // A text that was damaged is read no more: its last reading counts, or the newest version that is whole.
    const whole = saved.isWhole === false ? wholeVersionBefore(sql, { year, version }) : saved;
    const read = whole && engine.readPlan({ ...textsIn(whole), garden: stored.id, file });
    const plan = saved.isWhole === false ? (had ?? read) : (read ?? had);
    if (plan === null) throw new Error(`the plan of ${year} can't be read any more`);
    sql.transaction(() => storeReading(sql, { year, version }, { plan, readBy: code }));
  }
}

const textsIn = ({ text, beside }: PlanTexts) => ({ text, beside });

/** The garden that was built from, and its tasks as they stood. */
type BuiltFrom = { readonly stored: StoredGarden; readonly tasks: StoredTasks };

function storeBuild(context: GardenContext, { stored, tasks }: BuiltFrom, built: BuiltYear): void {
  const { sql, now, code, ring } = context;
  const before = buildRecord(sql);
  const lines = diaryLines(sql, before.line);
  if (before.number > 0 && lines.length > 0)
    storeMoved(
      sql,
      lines.map(({ id }) => id),
      movedSince(tasks, built),
    );
  const events = storedEvents(sql);
  const former = formerTasks(sql);
  const change = { was: readableEvents(events), is: built.events, now: now() };
  storeFormerTasks(sql, updateFormerTasks(former, change), former);
  storeTasks(sql, rowsOf(context, built), tasks);
  storeEvents(sql, built.events, events);
  storeYear(sql, built.year);
  storeDiaryReport(sql, built.diary);
  const { number } = before;
  const made = { revision: stored.revision, code, until: built.until };
  const line = lines.at(-1)?.id ?? before.line;
  const kept = {
    line,
    baselineOf: baselineKey(stored, built.year.baseline),
    failures: 0,
    retryAt: 0,
  };
  storeBuildRecord(sql, { number: number + 1, ...made, ...kept });
  const others = [weatherDueAt(context, stored), copyDueAt(context, stored)];
  ring(Math.min(built.until, ...others.map((due) => Math.max(due ?? built.until, now()))));
}

function movedSince(tasks: StoredTasks, { cards }: BuiltYear): readonly MovedTask[] {
  return changesBetween(taskCards(tasks), new Map(cards.map((card) => [card.id, card])));
}

/** A row for each task that is scheduled, has a day in a mean year, or was left this year, so that it can be had back. */
function rowsOf(
  { sql }: GardenContext,
  { events, cards, publishedState, year: { baseline } }: BuiltYear,
): readonly TaskRow[] {
  const eventKeys = eventsByTask(events);
  const rows = new Map<string, TaskRow>();
  for (const [id, day] of Object.entries(baseline)) rows.set(id, { ...BARE, id, baseline: day });
  for (const [id, published] of Object.entries(publishedState))
    rows.set(id, {
      ...(rows.get(id) ?? { ...BARE, id }),
      published,
      event: eventKeys.get(id) ?? null,
    });
  for (const card of cards)
    rows.set(card.id, { ...(rows.get(card.id) ?? { ...BARE, id: card.id }), card });
  for (const row of leftTasks({ sql })) if (!rows.get(row.id)?.card) rows.set(row.id, row);
  return [...rows.values()];
}

const BARE = { event: null, card: null, published: null, baseline: null } as const;

/** The first event that each task stands in. */
function eventsByTask(events: readonly Event[]): ReadonlyMap<string, string> {
  const keys = new Map<string, string>();
  for (const { key, tasks } of events)
    for (const task of tasks) if (!keys.has(task)) keys.set(task, key);
  return keys;
}

/** Stored tasks that the newest answer left this year. */
function leftTasks({ sql }: Pick<GardenContext, "sql">): readonly TaskRow[] {
  const query = "SELECT DISTINCT task FROM said WHERE task IS NOT NULL AND text = 'left this year'";
  const left = sql
    .rows<{ readonly task: string }>(query)
    .map(({ task }) => task)
    .filter((task) => newestAnswer(sql, task)?.text === "left this year");
  return tasksById(sql, left).map((row) => ({ ...row, event: null, published: null }));
}
