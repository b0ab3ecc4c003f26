import { expect, test } from "vitest";
import {
  buildRecord,
  discardBuild,
  isDayOver,
  owedBuild,
  storeBuildRecord,
} from "../../../src/host/store/build.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";
import { firstOf } from "./made.ts";

test("a garden that was never built has build 0, and a build's record comes back whole", async () => {
  await inStore("built", (sql) => {
    expect(buildRecord(sql)).toMatchObject({ number: 0, code: "", failures: 0, retryAt: 0 });
    const record = {
      ...{ number: 3, revision: 4, code: "code 1", until: 5, line: 6, baselineOf: "2027.1 code 1" },
      ...{ failures: 7, retryAt: 8 },
    };
    storeBuildRecord(sql, { ...record, number: 1 });
    storeBuildRecord(sql, record);
    expect(buildRecord(sql)).toEqual(record);
    discardBuild(sql);
    expect(buildRecord(sql)).toEqual({ ...record, code: "" });
  });
});

test("a build is owed by another revision, code or day, and by a feed that shows an earlier one", async () => {
  await inStore("owed", (sql) => {
    const owed = (code = "code 1", now = 50) => owedBuild(sql, code, now)?.owed;
    expect(owedBuild(sql, "code 1", 50)).toBeNull();
    savePlan(sql, firstOf("g"));
    expect(owed()).toBe(1);
    const record = { number: 1, revision: 1, code: "code 1", until: 51, line: 0 };
    const built = { ...record, baselineOf: null, failures: 0, retryAt: 0 };
    storeBuildRecord(sql, built);
    expect([owed(), owed("code 2"), owed("code 1", 51)]).toEqual([0, 1, 1]);
    storeFeed(sql, writtenFeed("x"));
    expect(owed()).toBe(0);
    storeBuildRecord(sql, { ...built, number: 2 });
    expect(owed()).toBe(1);
    storeBuildRecord(sql, { ...built, revision: 2 });
    expect(owed()).toBe(1);
  });
});

test("what a clock that ran ahead has left holds no longer once that is set right", async () => {
  await inStore("ahead", (sql) => {
    const day = 86_400_000;
    savePlan(sql, firstOf("g"));
    const built = {
      number: 1,
      revision: 1,
      code: "code 1",
      line: 0,
      baselineOf: null,
      failures: 1,
    };
    storeBuildRecord(sql, { ...built, until: 3650 * day, retryAt: 3650 * day });
    expect(owedBuild(sql, "code 1", 50)).toEqual({ owed: 1, retryAt: 0 });
    expect(isDayOver({ until: 3650 * day }, 50)).toBe(true);
    storeBuildRecord(sql, { ...built, until: 31 * day, retryAt: day / 4 });
    expect(owedBuild(sql, "code 1", 50)).toEqual({ owed: 0, retryAt: day / 4 });
    expect(isDayOver({ until: 31 * day }, 50)).toBe(false);
  });
});
