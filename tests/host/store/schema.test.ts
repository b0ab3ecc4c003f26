import { expect, test } from "vitest";
import { migrate } from "../../../src/host/store/schema.ts";
import { inStore } from "../in-store.ts";

test("tables are made once, and a later step is added to what is stored", async () => {
  await inStore("grows", (sql) => {
    sql.rows("INSERT INTO gone (at) VALUES (7)");
    migrate(sql);
    const first = "CREATE TABLE never_made_again (at INTEGER)";
    migrate(sql, [first, "ALTER TABLE gone ADD COLUMN why TEXT"]);
    migrate(sql, [first, "ALTER TABLE gone ADD COLUMN why TEXT"]);
    expect(sql.rows("SELECT * FROM gone")).toEqual([{ at: 7, why: null }]);
    expect(sql.rows("SELECT version FROM schema")).toEqual([{ version: 1 }, { version: 2 }]);
  });
});

test("a step that fails leaves nothing of itself, and is tried again", async () => {
  await inStore("fails", (sql) => {
    const half = "CREATE TABLE half (at INTEGER); INSERT INTO nowhere VALUES (1)";
    expect(() => migrate(sql, ["", half])).toThrow("nowhere");
    expect(() => sql.rows("SELECT * FROM half")).toThrow("no such table");
    migrate(sql, ["", "CREATE TABLE half (at INTEGER)"]);
    expect(sql.rows("SELECT * FROM half")).toEqual([]);
  });
});
