import { expect, test } from "vitest";
import {
  forgetFingerprints,
  loadJson,
  storeChangedTexts,
  storedNames,
} from "../../../src/host/store/changed-texts.ts";
import { loadText, storeText } from "../../../src/host/store/pieces.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";

const store = (sql: SqlStore, texts: Record<string, string>) =>
  storeChangedTexts(sql, "a/", new Map(Object.entries(texts)));

test("a text that says what is stored is not written again, and one that is gone goes", async () => {
  await inStore("changed", (sql) => {
    storeText(sql, "b/1", "another's");
    store(sql, { "a/1": "[1]", "a/2": "[2]" });
    sql.rows("UPDATE pieces SET bytes = x'00' WHERE name = 'a/1'");
    store(sql, { "a/1": "[1]", "a/3": "[3]" });
    expect(storedNames(sql, "a/")).toEqual(["a/1", "a/3"]);
    expect([loadText(sql, "a/1"), loadText(sql, "a/2"), loadText(sql, "b/1")]).toEqual([
      ...[null, null, "another's"],
    ]);
    store(sql, { "a/1": "[10]", "a/3": "[3]" });
    expect([loadJson(sql, "a/1"), loadJson(sql, "a/3")]).toEqual([[10], [3]]);
  });
});

test("a text whose fingerprint was forgotten is written again, whatever it says", async () => {
  await inStore("forgotten", (sql) => {
    store(sql, { "a/1": "[1]" });
    sql.rows("UPDATE pieces SET bytes = x'00'");
    forgetFingerprints(sql, "a/");
    store(sql, { "a/1": "[1]" });
    expect(loadJson(sql, "a/1")).toEqual([1]);
  });
});

test("what is no JSON counts as never stored", async () => {
  await inStore("no-json", (sql) => {
    store(sql, { "a/1": "[1" });
    expect([loadJson(sql, "a/1"), loadJson(sql, "a/2")]).toEqual([null, null]);
  });
});
