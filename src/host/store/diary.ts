import { type Day, dayFromIso, isoOf } from "../../base/days/day.ts";
import { isAnswer } from "../../garden/diary/answers.ts";
import type { DiaryLine, Plan } from "../../garden/model/plan.ts";

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

/** A line as a row of the store, its day ISO. */
export type DiaryRow = Omit<StoredLine, "day"> & { readonly day: string };

/** Every line said to a garden, in the order they were said; to be run with other statements in one look at the store. */
export function diaryLines(db: D1Database, garden: string): D1PreparedStatement {
  return db
    .prepare(
      `SELECT id, day, text, task, person, said_at AS saidAt FROM diary WHERE garden = ?1 ORDER BY id`,
    )
    .bind(garden);
}

/** The row, read; throws on a day that is none, which no code of ours writes. */
export function lineOf(row: DiaryRow): StoredLine {
  const day = dayFromIso(row.day);
  if (day === null) throw new RangeError(`no such day: ${row.day}`);
  return { ...row, day };
}

/** Adds a line and gives its number; null where there is no such garden. Nothing is ever changed or taken away: a later line undoes. */
export async function addLine(
  db: D1Database,
  garden: string,
  { day, text, task, person, saidAt }: SaidLine,
): Promise<number | null> {
  const row = await db
    .prepare(
      `INSERT INTO diary (garden, day, text, task, person, said_at)
        SELECT ?1, ?2, ?3, ?4, ?5, ?6 WHERE EXISTS (SELECT 1 FROM gardens WHERE id = ?1) RETURNING id`,
    )
    .bind(garden, isoOf(day), text, task, person, saidAt)
    .first<{ readonly id: number }>();
  return row?.id ?? null;
}

/**
 * Adds an answer to a task, unless the newest line about that task says the very same: two taps are one. That it is not yet
 * time is another answer on another day. Gives whether it was added.
 */
export function addAnswer(
  db: D1Database,
  garden: string,
  said: SaidLine & { readonly task: string },
): Promise<boolean> {
  const newest = (what: string) =>
    `(SELECT ${what} FROM diary WHERE garden = ?1 AND task = ?4 ORDER BY id DESC LIMIT 1)`;
  const same = `?3 IS ${newest("text")} AND (?3 <> 'not yet' OR ?2 IS ${newest("day")})`;
  return addUnless(db, garden, said, same);
}

/** Adds a line in plain words, unless the same person's newest one says the very same of that day. Gives whether it was added. */
export function addWords(
  db: D1Database,
  garden: string,
  said: SaidLine & { readonly task: null },
): Promise<boolean> {
  const newest = `SELECT day || ' ' || text FROM diary
    WHERE garden = ?1 AND task IS ?4 AND person IS ?5 ORDER BY id DESC LIMIT 1`;
  return addUnless(db, garden, said, `?2 || ' ' || ?3 IS (${newest})`);
}

async function addUnless(
  db: D1Database,
  garden: string,
  { day, text, task, person, saidAt }: SaidLine,
  same: string,
): Promise<boolean> {
  const done = await db
    .prepare(
      `INSERT INTO diary (garden, day, text, task, person, said_at)
        SELECT ?1, ?2, ?3, ?4, ?5, ?6 WHERE EXISTS (SELECT 1 FROM gardens WHERE id = ?1) AND NOT (${same})`,
    )
    .bind(garden, isoOf(day), text, task, person, saidAt)
    .run();
  return done.meta.changes > 0;
}

/** The plans in year order with what was said behind the newest one's own diary, whoever said it named as the plans name them. */
export function withDiary(plans: readonly Plan[], lines: readonly StoredLine[]): readonly Plan[] {
  const newest = plans.length - 1;
  if (lines.length === 0) return plans;
  const names = new Map(plans.flatMap(({ people }) => people).map(({ key, name }) => [key, name]));
  const said = lines.map(({ id, day, text, task, person }): DiaryLine => {
    const by = person === null ? undefined : names.get(person);
    const at = { file: "diary", line: id, column: 1 };
    if (task !== null && isAnswer(text)) return { day, text, at, answers: { task, by: person } };
    return { day, text: by === undefined ? text : `${by}: ${text}`, at };
  });
  return plans.map((plan, i) =>
    i === newest ? { ...plan, diary: [...plan.diary, ...said] } : plan,
  );
}
