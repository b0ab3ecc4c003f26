import type { DiaryLine, Plan } from "../../app/index.ts";
import { isAnswer } from "../../app/records.ts";
import { type Day, dayFromIso, isoOf } from "../../base/index.ts";
import { rowSum, storedInstant } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * A line that was said to the garden over a link: its day, what was said in plain words, the task it answers, who said
 * it (key of a person) and when [ms since 1970 UTC]; null where that is not known.
 */
export type SaidLine = {
  readonly day: Day;
  readonly text: string;
  readonly task: string | null;
  readonly person: string | null;
  readonly saidAt: number;
};

/** A line as it stands in the store, with the number it was given; numbers only rise. */
export type StoredLine = SaidLine & { readonly id: number };

type DiaryRow = Omit<StoredLine, "day"> & { readonly day: string; readonly sum: number | null };

const COLUMNS = "id, day, text, task, person, said_at AS saidAt, sum";

/** The row, read; empty where it is not what was written, so that it counts for nothing. */
function linesOf({ sum, ...row }: DiaryRow): readonly StoredLine[] {
  const day = dayFromIso(row.day);
  const isWhole = sum === null || sum === lineSum(row);
  return day === null || !isWhole ? [] : [{ ...row, day, saidAt: storedInstant(row.saidAt) }];
}

const lineSum = ({ day, text, task, person, saidAt }: Omit<DiaryRow, "id" | "sum">) =>
  rowSum([day, text, task, person, saidAt]);

/** A line of the diary that is not what was written: its number, and what is left of it. */
export type DamagedLine = Pick<DiaryRow, "id" | "day" | "text">;

/** Every line that is not what was written, and so counts for nothing. */
export function damagedLines(sql: SqlStore): readonly DamagedLine[] {
  return sql
    .rows<DiaryRow>(`SELECT ${COLUMNS} FROM diary ORDER BY id`)
    .filter((row) => linesOf(row).length === 0);
}

/** Every line said to a garden after the one of that number (0: every one), in the order they were said. */
export function diaryLines(sql: SqlStore, after = 0): readonly StoredLine[] {
  const rows = sql.rows<DiaryRow>(`SELECT ${COLUMNS} FROM said WHERE id > ?1 ORDER BY id`, after);
  return rows.flatMap(linesOf);
}

/** Every line that was ever said, those taken back too, in the order they were said. */
export function storedDiary(sql: SqlStore): readonly StoredLine[] {
  return sql.rows<DiaryRow>(`SELECT ${COLUMNS} FROM diary ORDER BY id`).flatMap(linesOf);
}

/** Every line that answers a task, in the order they were said. */
export function answersIn(sql: SqlStore): readonly StoredLine[] {
  return sql
    .rows<DiaryRow>(`SELECT ${COLUMNS} FROM said WHERE task IS NOT NULL ORDER BY id`)
    .flatMap(linesOf);
}

/** Those of some lines, by their numbers, that answer a task. */
export function answersAmong(sql: SqlStore, lines: readonly number[]): readonly StoredLine[] {
  const query = `SELECT ${COLUMNS} FROM diary WHERE task IS NOT NULL AND id IN (SELECT value FROM json_each(?1))`;
  return sql.rows<DiaryRow>(query, JSON.stringify(lines)).flatMap(linesOf);
}

/** The newest line that answers a task; null where none does. */
export function newestAnswer(sql: SqlStore, task: string): StoredLine | null {
  const row = firstRow<DiaryRow>(
    sql,
    `SELECT ${COLUMNS} FROM said WHERE task = ?1 ORDER BY id DESC LIMIT 1`,
    task,
  );
  return row === null ? null : (linesOf(row)[0] ?? null);
}

/** The newest answer to each of some tasks, by task; those that nothing answers are left out. */
export function newestAnswers(
  sql: SqlStore,
  tasks: readonly string[],
): ReadonlyMap<string, StoredLine> {
  const rows = sql.rows<DiaryRow & { readonly task: string }>(
    `SELECT ${COLUMNS} FROM diary WHERE id IN
      (SELECT (SELECT max(id) FROM said WHERE task = value) FROM json_each(?1))`,
    JSON.stringify(tasks),
  );
  return new Map(rows.flatMap((row) => linesOf(row).map((line) => [row.task, line] as const)));
}

/** The line about a task before the one of that number; null where there is none. */
export function answerBefore(sql: SqlStore, task: string, id: number): StoredLine | null {
  const row = firstRow<DiaryRow>(
    sql,
    `SELECT ${COLUMNS} FROM said WHERE task = ?1 AND id < ?2 ORDER BY id DESC LIMIT 1`,
    ...[task, id],
  );
  return row === null ? null : (linesOf(row)[0] ?? null);
}

/** Who said each of some lines (key of a person; null: not known), by the lines' numbers. */
export function peopleOfLines(
  sql: SqlStore,
  lines: readonly number[],
): ReadonlyMap<number, string | null> {
  type Row = Pick<StoredLine, "id" | "person">;
  const query = "SELECT id, person FROM diary WHERE id IN (SELECT value FROM json_each(?1))";
  return new Map(sql.rows<Row>(query, JSON.stringify(lines)).map(({ id, person }) => [id, person]));
}

/** As many of the newest lines as are looked through for answers of today. Source: house rule; a day of a busy household. */
const LOOKED_THROUGH = 60;

/** The tasks that were answered since an instant [ms since 1970 UTC], each once. */
export function answeredSince(sql: SqlStore, since: number): readonly string[] {
  const newest = `SELECT task, said_at FROM said ORDER BY id DESC LIMIT ${LOOKED_THROUGH}`;
  const query = `SELECT DISTINCT task FROM (${newest}) WHERE task IS NOT NULL AND said_at >= ?1`;
  return sql.rows<{ readonly task: string }>(query, since).map(({ task }) => task);
}

/**
 * Lines of one person within a day, of whichever link, and of a garden in all. Source: house rule; a busy household writes a
 * dozen a day, and a thousand a year.
 */
export const MOST_LINES = { personADay: 200, garden: 20_000 } as const;

const DAY_MS = 86_400_000;

/** Why somebody can't write another line at an instant [ms since 1970 UTC], in a sentence; null where they can. */
export function whyFull(sql: SqlStore, person: string | null, now: number): string | null {
  const last = firstRow<{ readonly id: number | null }>(sql, "SELECT max(id) AS id FROM diary")?.id;
  if ((last ?? 0) >= MOST_LINES.garden)
    return `The diary is full: it has ${MOST_LINES.garden} lines.`;
  const row = firstRow<{ readonly saidAt: number }>(
    sql,
    "SELECT said_at AS saidAt FROM diary WHERE person IS ?1 ORDER BY id DESC LIMIT 1 OFFSET ?2",
    ...[person, MOST_LINES.personADay - 1],
  );
  const isToday = row !== null && now >= row.saidAt && now - row.saidAt < DAY_MS;
  return isToday
    ? `That is ${MOST_LINES.personADay} lines within a day, as many as one person may write. Tomorrow there is room again.`
    : null;
}

/** Adds a line. Nothing is ever changed or taken away: a later line undoes. */
export function addLine(sql: SqlStore, { day, text, task, person, saidAt }: SaidLine): void {
  const iso = isoOf(day);
  const sum = lineSum({ day: iso, text, task, person, saidAt });
  sql.rows(
    "INSERT INTO diary (day, text, task, person, said_at, sum) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    ...[iso, text, task, person, saidAt, sum],
  );
}

/** Stores a line as it was stored elsewhere, under its number. */
export function storeLine(
  sql: SqlStore,
  { id, day, text, task, person, saidAt }: StoredLine,
): void {
  const iso = isoOf(day);
  const sum = lineSum({ day: iso, text, task, person, saidAt });
  sql.rows(
    "INSERT INTO diary (id, day, text, task, person, said_at, sum) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
    ...[id, iso, text, task, person, saidAt, sum],
  );
}

/**
 * Adds an answer to a task, unless the newest line about that task says the very same: two taps are one. That it is not yet
 * time is another answer on another day. Gives whether it was added.
 */
export function addAnswer(sql: SqlStore, said: SaidLine & { readonly task: string }): boolean {
  const newest = newestAnswer(sql, said.task);
  const same = newest?.text === said.text && (said.text !== "not yet" || newest.day === said.day);
  if (!same) addLine(sql, said);
  return !same;
}

/** Adds a line in plain words, unless the same person's newest one says the very same of that day. Gives whether it was added. */
export function addWords(sql: SqlStore, said: SaidLine & { readonly task: null }): boolean {
  const newest = firstRow<{ readonly day: string; readonly text: string }>(
    sql,
    "SELECT day, text FROM said WHERE task IS NULL AND person IS ?1 ORDER BY id DESC LIMIT 1",
    said.person,
  );
  const same = newest?.text === said.text && newest.day === isoOf(said.day);
  if (!same) addLine(sql, said);
  return !same;
}

/** The plans in year order with what was said behind the newest one's own diary, whoever said it named as the plans name them. */
export function withDiary(plans: readonly Plan[], lines: readonly StoredLine[]): readonly Plan[] {
  const newest = plans.length - 1;
  if (lines.length === 0) return plans;
  const said = linesForPlan(plans, lines);
  return plans.map((plan, i) =>
    i === newest ? { ...plan, diary: [...plan.diary, ...said] } : plan,
  );
}

/** What was said as lines of a plan's diary, whoever said it named as the plans name them. */
export function linesForPlan(
  plans: readonly Plan[],
  lines: readonly StoredLine[],
): readonly DiaryLine[] {
  const names = new Map(plans.flatMap(({ people }) => people).map(({ key, name }) => [key, name]));
  return lines.map(({ id, day, text, task, person }): DiaryLine => {
    const by = person === null ? undefined : names.get(person);
    const at = { file: "diary", line: id, column: 1 };
    if (task !== null && isAnswer(text)) return { day, text, at, answers: { task, by: person } };
    return { day, text: by === undefined ? text : `${by}: ${text}`, at };
  });
}
