import { expect, test } from "vitest";
import { migrate } from "../../../src/host/store/schema.ts";
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
