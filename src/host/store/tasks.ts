import type { Baseline, PublishedState, PublishedTask } from "../../app/index.ts";
import type { TaskCard } from "../../app/records.ts";
import type { Day } from "../../base/index.ts";
import { parseStoredJson } from "./bytes.ts";
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
  return { ...rest, card: parseStoredJson(card), published: parseStoredJson(published) };
}

const TASK_COLUMNS = "id, event, card, published, baseline";

/** Tasks by their ids, those that are stored, in the order of a walk through the garden, then by id. */
export function tasksById(sql: SqlStore, ids: readonly string[]): readonly TaskRow[] {
  const rows = sql.rows<StoredTaskRow>(
    `SELECT ${TASK_COLUMNS} FROM tasks WHERE id IN (SELECT value FROM json_each(?1)) ORDER BY id`,
    JSON.stringify(ids),
  );
  const rank = ({ card }: TaskRow) => card?.bedRank ?? 0;
  return rows.map(taskOf).sort((a, b) => rank(a) - rank(b));
}

/** Whether the year has, or lately had, a task of that id. */
export function hasTask(sql: SqlStore, id: string): boolean {
  const query = `SELECT 1 WHERE EXISTS (SELECT 1 FROM tasks WHERE id = ?1)
    OR EXISTS (SELECT 1 FROM former, json_each(former.tasks) AS had WHERE had.value = ?1)
    OR EXISTS (SELECT 1 FROM diary WHERE task = ?1)`;
  return firstRow(sql, query, id) !== null;
}

/** How each task was last published. */
export function publishedState(sql: SqlStore): PublishedState {
  type Row = { readonly id: string; readonly published: string };
  const rows = sql.rows<Row>(
    "SELECT id, published FROM tasks WHERE published IS NOT NULL ORDER BY id",
  );
  const state: Record<string, PublishedTask> = {};
  for (const { id, published } of rows) {
    const task = parseStoredJson<PublishedTask>(published);
    if (task) state[id] = task;
  }
  return state;
}

/** Each task's due day in a mean year, as it is kept. */
export function baselineDays(sql: SqlStore): Baseline {
  type Row = { readonly id: string; readonly baseline: Day };
  const rows = sql.rows<Row>("SELECT id, baseline FROM tasks WHERE baseline IS NOT NULL");
  return Object.fromEntries(rows.map(({ id, baseline }) => [id, baseline]));
}

/** The cards of the tasks that are scheduled, by id. */
export function taskCards(sql: SqlStore): ReadonlyMap<string, TaskCard> {
  type Row = { readonly card: string };
  const rows = sql.rows<Row>(
    "SELECT card FROM tasks WHERE card IS NOT NULL AND published IS NOT NULL",
  );
  const cards = rows.flatMap(({ card }) => parseStoredJson<TaskCard>(card) ?? []);
  return new Map(cards.map((card) => [card.id, card]));
}

/** Stores the year's tasks in place of those that stood: only rows that differ are written. */
export function storeTasks(sql: SqlStore, tasks: readonly TaskRow[]): void {
  const stored = sql.rows<StoredTaskRow>(`SELECT ${TASK_COLUMNS} FROM tasks`);
  const had = new Map(stored.map((row) => [row.id, row]));
  for (const task of tasks) {
    const row = rowOf(task);
    const was = had.get(task.id);
    had.delete(task.id);
    if (was === undefined || !isSameRow(was, row)) writeTask(sql, row);
  }
  for (const id of had.keys()) sql.rows("DELETE FROM tasks WHERE id = ?1", id);
}

function rowOf({ card, published, ...rest }: TaskRow): StoredTaskRow {
  const json = (value: unknown) => (value === null ? null : JSON.stringify(value));
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
