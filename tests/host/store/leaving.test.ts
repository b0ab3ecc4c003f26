import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { storeBuildRecord } from "../../../src/host/store/build.ts";
import { storeChangedTexts } from "../../../src/host/store/changed-texts.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { storeFormerTasks } from "../../../src/host/store/events.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { gardenRecord, loadGarden } from "../../../src/host/store/gardens.ts";
import { deleteGarden, isGone } from "../../../src/host/store/leaving.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { storeMoved } from "../../../src/host/store/moved.ts";
import { savedPlan, savePlan } from "../../../src/host/store/plans.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { storeTasks } from "../../../src/host/store/tasks.ts";
import { countWrite } from "../../../src/host/store/writes.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";
import { bare, firstOf, SAVED_AT } from "./made.ts";

/** Something in every table that a garden has. */
function liveIn(sql: SqlStore): void {
  savePlan(sql, firstOf("weir", { plan: bare("Weir", 2027, ["Oda"]) }));
  const said = { text: "done", task: "2027/beet/thin/1", person: "oda", saidAt: SAVED_AT };
  addLine(sql, { day: dayOrThrow(2027, 5, 8), ...said });
  const ledger = { fingerprint: "p", sequence: 0, stamp: 0, when: "", text: "" };
  storeFeed(sql, writtenFeed("x", { ledger: { entries: { a: ledger } } }));
  revoke(sql, "reader-1", SAVED_AT);
  storeBuildRecord(sql, {
    ...{ number: 1, revision: 1, code: "c", until: 0, line: 1, baselineOf: null },
    ...{ failures: 0, retryAt: 0 },
  });
  storeTasks(sql, [{ id: "a", event: null, card: null, published: null, baseline: null }]);
  sql.rows("INSERT INTO events (key, in_set, day, json) VALUES ('a', 'both', 1, '{}')");
  storeFormerTasks(sql, { a: { tasks: ["b"], at: 1 } });
  storeMoved(sql, [1], []);
  storeChangedTexts(sql, "year/", new Map([["year/observations", "[]"]]));
  countWrite(sql, "oda", SAVED_AT);
}

function tables(sql: SqlStore): readonly string[] {
  const query =
    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT GLOB 'sqlite_*' AND name NOT GLOB '_cf_*'";
  return sql
    .rows<{ readonly name: string }>(query)
    .map(({ name }) => name)
    .filter((name) => sql.rows(`SELECT 1 FROM ${name} LIMIT 1`).length > 0)
    .sort();
}

test("a garden deleted for good leaves nothing in any table but the mark that it is gone", async () => {
  await inStore("weir", (sql) => {
    liveIn(sql);
    const all = ["build", "diary", "events", "feeds", "former", "garden", "ledger", "moved"];
    expect(tables(sql)).toEqual(
      [
        ...all,
        "fingerprints",
        "in_force",
        "people",
        "pieces",
        "plans",
        "revoked",
        "schema",
        "tasks",
        "writes",
      ].sort(),
    );
    deleteGarden(sql, SAVED_AT);
    expect(tables(sql)).toEqual(["gone", "schema"]);
    expect([isGone(sql), gardenRecord(sql), loadGarden(sql)]).toEqual([true, null, null]);
  });
});

test("it is never made again under that id, so that no old link opens anything", async () => {
  await inStore("weir", (sql) => {
    expect(savePlan(sql, firstOf("weir"))).toBeNull();
    expect([savedPlan(sql, 2027), loadGarden(sql)]).toEqual([null, null]);
  });
});

test("deleting it again is no mistake", async () => {
  await inStore("weir", (sql) => {
    deleteGarden(sql, SAVED_AT + 1);
    expect(sql.rows("SELECT at FROM gone")).toEqual([{ at: SAVED_AT }]);
  });
});
