import { expect, test } from "vitest";
import { insertVersion, plansInForce } from "../../../src/host/store/plans.ts";
import { migrate } from "../../../src/host/store/schema.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";
import { firstOf } from "./made.ts";

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

/** What the fifth step and those behind it made, taken away, so that the store is as it was before. */
const BEFORE_IN_FORCE = `DROP TABLE in_force; DROP TRIGGER comes_into_force;
  DROP TRIGGER changes_in_force; DROP TRIGGER goes_out_of_force;
  ALTER TABLE garden DROP COLUMN uids; DROP TABLE copies;
  DROP TABLE next_owners; DROP TABLE recovery; DELETE FROM schema WHERE version >= 5`;

test("of plans saved before that step the newest of each year are in force", async () => {
  await inStore("older", (sql) => {
    sql.rows(BEFORE_IN_FORCE);
    const { base: _, first: __, origin: ___, garden: ____, ...rest } = firstOf("older");
    for (const version of [1, 2, 3]) insertVersion(sql, { ...rest, version });
    insertVersion(sql, { ...rest, year: 2026, version: 4 });
    migrate(sql);
    expect(plansInForce(sql)).toMatchObject([
      { year: 2026, version: 4, readBy: "code 1", summary: { name: "older" } },
      { year: 2027, version: 3 },
    ]);
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
