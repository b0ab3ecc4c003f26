import { firstRow, type SqlStore } from "./sql.ts";

/** So many lines of one person within a day are offered to the owner to be taken back in one go. Source: house rule. */
const MANY = 20;

/** Days that are offered at most, the newest first. */
const OFFERED = 20;

/** Lines of one person (key; null: not known) by their numbers, both inclusive. */
export type LineRange = {
  readonly person: string | null;
  readonly first: number;
  readonly last: number;
};

/** What one person said within a day: how many lines, when the first of them [ms since 1970 UTC], and whether they are taken back. */
export type DayOfLines = LineRange & {
  readonly count: number;
  readonly saidAt: number;
  readonly isTakenBack: boolean;
};

/** The days (UTC) on which one person said many lines, newest first. */
export function daysOfManyLines(sql: SqlStore): readonly DayOfLines[] {
  type Row = Omit<DayOfLines, "isTakenBack"> & { readonly takenBack: number };
  const rows = sql.rows<Row>(
    `SELECT person, min(id) AS first, max(id) AS last, count(*) AS count, min(said_at) AS saidAt,
      max(id NOT IN (SELECT id FROM said)) AS takenBack
      FROM diary GROUP BY person, said_at / 86400000 HAVING count(*) >= ?1 ORDER BY last DESC LIMIT ?2`,
    ...[MANY, OFFERED],
  );
  return rows.map(({ takenBack, ...row }) => ({ ...row, isTakenBack: takenBack === 1 }));
}

/** All that was taken back and is not had back, in the order of its lines, each with the instant [ms since 1970 UTC]. */
export function takenBackRanges(sql: SqlStore): readonly (LineRange & { readonly at: number })[] {
  return sql.rows("SELECT person, first, last, at FROM taken_back ORDER BY first, last");
}

/** Takes those lines back at an instant [ms since 1970 UTC]: they stay in the store and are read no more. Twice is once. */
export function takeBack(sql: SqlStore, { person, first, last }: LineRange, at: number): void {
  const same = "SELECT 1 FROM taken_back WHERE person IS ?1 AND first = ?2 AND last = ?3";
  if (firstRow(sql, same, person, first, last) !== null) return;
  sql.rows(
    "INSERT INTO taken_back (person, first, last, at) VALUES (?1, ?2, ?3, ?4)",
    ...[person, first, last, at],
  );
}

/** Reads those lines again. */
export function haveBack(sql: SqlStore, { person, first, last }: LineRange): void {
  sql.rows(
    "DELETE FROM taken_back WHERE person IS ?1 AND first = ?2 AND last = ?3",
    ...[person, first, last],
  );
}
