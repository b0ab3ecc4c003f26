import type { Baseline, PublishedState, PublishedTask } from "../../app/index.ts";
import type { TaskCard } from "../../app/records.ts";
import type { Day } from "../../base/index.ts";
import { readable, seal, unseal } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * One task as it is stored: the event it stands in, null where it stands in none; how it was last published, null where it is
 * not scheduled any more; its due day in a mean year.
 */
export type TaskRow = {
  readonly id: string;
  readonly event: string | null;
  readonly card: TaskCard | null;
  readonly published: PublishedTask | null;
  readonly baseline: Day | null;
};

type StoredTaskRow = Omit<TaskRow, "card" | "published"> & {
  readonly card: string | null;
  readonly published: string | null;
};

function taskOf({ card, published, ...rest }: StoredTaskRow): TaskRow {
  return { ...rest, card: unseal(card), published: unseal(published) };
}

const TASK_COLUMNS = "id, event, card, published, baseline";

/** Tasks by their ids, those that are stored, in the order of ids. */
export function tasksById(sql: SqlStore, ids: readonly string[]): readonly TaskRow[] {
  const query = `SELECT ${TASK_COLUMNS} FROM tasks WHERE ${IS_AMONG} ORDER BY id`;
  return sql.rows<StoredTaskRow>(query, JSON.stringify(ids)).map(taskOf);
}

const IS_AMONG = "id IN (SELECT value FROM json_each(?1))";

/** What cards did not have at first: those that earlier code stored lack it till the next build. */
const LATER_FIELDS = { bed: "", text: "", people: [], needs: [], minutes: null } as const;

/** The cards of tasks by their ids, those that have one, in the order of a walk through the garden, then by id. */
export function cardsById(sql: SqlStore, ids: readonly string[]): readonly TaskCard[] {
  const query = `SELECT card FROM tasks WHERE ${IS_AMONG} AND card IS NOT NULL ORDER BY id`;
  return sql
    .rows<{ readonly card: string }>(query, JSON.stringify(ids))
    .map(({ card }) => readable<TaskCard>(card))
    .map((card) => ({ ...LATER_FIELDS, ...card }))
    .sort((a, b) => a.bedRank - b.bedRank);
}

/** Whether the year has, or lately had, a task of that id. */
export function hasTask(sql: SqlStore, id: string): boolean {
  const query = `SELECT 1 WHERE EXISTS (SELECT 1 FROM tasks WHERE id = ?1)
    OR EXISTS (SELECT 1 FROM former WHERE instr(tasks, json_quote(?1)) > 0)
    OR EXISTS (SELECT 1 FROM diary WHERE task = ?1)`;
  return firstRow(sql, query, id) !== null;
}

/** Every stored task by id, unparsed: a build reads them once, and takes from them all that it has to know. */
export type StoredTasks = ReadonlyMap<string, StoredTaskRow>;

/** Every stored task, in the order of ids. */
export function storedTasks(sql: SqlStore): StoredTasks {
  const rows = sql.rows<StoredTaskRow>(`SELECT ${TASK_COLUMNS} FROM tasks ORDER BY id`);
  return new Map(rows.map((row) => [row.id, row]));
}

/** How each task was last published. */
export function publishedState(tasks: StoredTasks): PublishedState {
  const state: Record<string, PublishedTask> = {};
  for (const { id, published } of tasks.values()) {
    const task = unseal<PublishedTask>(published);
    if (task) state[id] = task;
  }
  return state;
}

type DueRow = Pick<TaskRow, "id" | "baseline">;

/** Each task's due day in a mean year, of those that have one. */
export function baselineDays(tasks: Iterable<DueRow>): Baseline {
  const days: Record<string, Day> = {};
  for (const { id, baseline } of tasks) if (baseline !== null) days[id] = baseline;
  return days;
}

/** The same as they are stored, where nothing else is asked of the tasks. */
export function loadBaseline(sql: SqlStore): Baseline {
  return baselineDays(sql.rows<DueRow>("SELECT id, baseline FROM tasks ORDER BY id"));
}

/** The cards of the tasks that are scheduled, by id. */
export function taskCards(tasks: StoredTasks): ReadonlyMap<string, TaskCard> {
  const scheduled = [...tasks.values()].filter(({ published }) => published !== null);
  const cards = scheduled.flatMap(({ card }) => unseal<TaskCard>(card) ?? []);
  return new Map(cards.map((card) => [card.id, card]));
}

/** Stores the year's tasks in place of those that stood: only rows that differ are written. */
export function storeTasks(
  sql: SqlStore,
  tasks: readonly TaskRow[],
  stood: StoredTasks = storedTasks(sql),
): void {
  const had = new Map(stood);
  for (const task of tasks) {
    const row = rowOf(task);
    const was = had.get(task.id);
    had.delete(task.id);
    if (was === undefined || !isSameRow(was, row)) writeTask(sql, row);
  }
  for (const id of had.keys()) sql.rows("DELETE FROM tasks WHERE id = ?1", id);
}

function rowOf({ card, published, ...rest }: TaskRow): StoredTaskRow {
  const json = (value: unknown) => (value === null ? null : seal(value));
  return { ...rest, card: json(card), published: json(published) };
}

function isSameRow(a: StoredTaskRow, b: StoredTaskRow): boolean {
  return (
    a.card === b.card &&
    a.published === b.published &&
    a.event === b.event &&
    a.baseline === b.baseline
  );
}

function writeTask(sql: SqlStore, { id, event, card, published, baseline }: StoredTaskRow): void {
  sql.rows(
    "INSERT OR REPLACE INTO tasks (id, event, card, published, baseline) VALUES (?1, ?2, ?3, ?4, ?5)",
    ...[id, event, card, published, baseline],
  );
}
