import { expect, test } from "vitest";
import { mendDamage } from "../../../src/host/store/damage.ts";
import { diaryLines } from "../../../src/host/store/diary.ts";
import { isRevoked } from "../../../src/host/store/links.ts";
import { opensAsOwner } from "../../../src/host/store/owners.ts";
import { plansInForce } from "../../../src/host/store/plans.ts";
import { migrate, STEPS } from "../../../src/host/store/schema.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";

const stepsDone = (sql: SqlStore) =>
  sql.rows<{ readonly version: number }>("SELECT version FROM schema").length;

test("tables are made once, and a later step is added to what is stored", async () => {
  await inStore("grows", (sql) => {
    sql.rows("INSERT INTO gone (at) VALUES (7)");
    migrate(sql);
    const done = stepsDone(sql);
    const made = Array<string>(done).fill("CREATE TABLE never_made_again (at INTEGER)");
    const later = [...made, "ALTER TABLE gone ADD COLUMN why TEXT"];
    migrate(sql, later);
    migrate(sql, later);
    expect(sql.rows("SELECT * FROM gone")).toEqual([{ at: 7, why: null }]);
    expect(stepsDone(sql)).toBe(done + 1);
  });
});

test("a step that fails leaves nothing of itself, and is tried again", async () => {
  await inStore("fails", (sql) => {
    const half = "CREATE TABLE half (at INTEGER); INSERT INTO nowhere VALUES (1)";
    const made = Array<string>(stepsDone(sql)).fill("");
    expect(() => migrate(sql, [...made, half])).toThrow("nowhere");
    expect(() => sql.rows("SELECT * FROM half")).toThrow("no such table");
    migrate(sql, [...made, "CREATE TABLE half (at INTEGER)"]);
    expect(sql.rows("SELECT * FROM half")).toEqual([]);
  });
});

/** Takes away all that a store has, and makes it as it was after so many steps. */
function asOf(sql: SqlStore, steps: number): void {
  type Row = { readonly type: string; readonly name: string };
  const query =
    "SELECT type, name FROM sqlite_schema WHERE type IN ('view', 'table') AND name NOT GLOB 'sqlite_*' AND name NOT GLOB '_cf_*' ORDER BY type DESC";
  for (const { type, name } of sql.rows<Row>(query)) sql.rows(`DROP ${type} ${name}`);
  migrate(sql, STEPS.slice(0, steps));
}

test("of plans saved before that step the newest of each year are in force, and none of them counts as damaged", async () => {
  await inStore("older", (sql) => {
    asOf(sql, 4);
    sql.rows(
      "INSERT INTO garden (only, id, changed_at, origin, owner_next) VALUES (1, 'older', 5, '', 7)",
    );
    for (const [year, version] of [
      [2027, 1],
      [2027, 2],
      [2027, 3],
      [2026, 4],
    ])
      sql.rows(
        "INSERT INTO plans (year, version, text, beside, file, summary, read_by, saved_at) VALUES (?1, ?2, 'x', '{}', '', ?3, 'code 1', 5)",
        ...[year ?? 0, version ?? 0, JSON.stringify({ name: "older" })],
      );
    sql.rows("INSERT INTO diary (day, text, said_at) VALUES ('2027-05-08', 'carrots up', 5)");
    sql.rows("INSERT INTO revoked (link, at) VALUES ('reader-1', 5)");
    migrate(sql);
    expect(plansInForce(sql)).toMatchObject([
      { year: 2026, version: 4, readBy: "code 1", summary: { name: "older" } },
      { year: 2027, version: 3 },
    ]);
    expect([opensAsOwner(sql, 1), opensAsOwner(sql, 7), isRevoked(sql, "reader-1")]).toEqual([
      ...[true, true, true],
    ]);
    expect(diaryLines(sql)).toMatchObject([{ text: "carrots up" }]);
    expect(mendDamage(sql, 6)).toBe(false);
  });
});

test("a step's number that was damaged runs no step twice and leaves none out", async () => {
  await inStore("damaged", (sql) => {
    const steps = stepsDone(sql);
    for (const wrong of [0, 9999]) {
      sql.rows("UPDATE schema SET version = ?1 WHERE rowid = ?2", wrong, steps);
      migrate(sql);
      expect(stepsDone(sql)).toBe(steps);
    }
  });
});
