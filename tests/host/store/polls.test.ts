import { expect, test } from "vitest";
import { storeBuildRecord } from "../../../src/host/store/build.ts";
import { unzip } from "../../../src/host/store/bytes.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { pollRecord } from "../../../src/host/store/polls.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";
import { firstOf } from "./made.ts";

const KEY = { link: "reader-1", feed: "tasks.ics" };

const look = (sql: SqlStore, held: string | null = null) =>
  pollRecord(sql, KEY, { code: "code 1", now: 50, held });

test("a poll looks once for its garden, its link, its feed and the build that is owed", async () => {
  await inStore("looked", (sql) => {
    expect(look(sql)).toBeNull();
    savePlan(sql, firstOf("g"));
    const never = {
      print: null,
      size: null,
      lastModified: null,
      sum: null,
      bodySum: null,
      bytes: null,
    };
    const open = { revoked: 0 };
    expect(look(sql)).toEqual({ ...open, ...never, owed: 1, retryAt: 0 });
    storeBuildRecord(sql, {
      ...{ number: 1, revision: 1, code: "code 1", until: 51, line: 0 },
      ...{ baselineOf: null, failures: 1, retryAt: 7 },
    });
    storeFeed(sql, writtenFeed("x", { link: "reader-1", print: "p" }));
    expect(look(sql)).toMatchObject({ owed: 0, retryAt: 7, print: "p", size: 1 });
    revoke(sql, "reader-1", 9);
    expect(look(sql)).toMatchObject({ ...never, revoked: 1 });
  });
});

test("the bytes come along in that one look, unless the client may have them", async () => {
  await inStore("with-bytes", (sql) => {
    savePlan(sql, firstOf("g"));
    storeFeed(sql, writtenFeed("x", { link: "reader-1", print: "p7" }));
    const bytes = look(sql, "")?.bytes;
    expect(bytes && unzip(new Uint8Array(bytes))).toBe("x");
    expect(look(sql, '"p6.0.gz"')?.bytes).toEqual(bytes);
    expect(look(sql, 'W/"p7.0.gz"')?.bytes).toBeNull();
    expect(look(sql, null)?.bytes).toBeNull();
  });
});
