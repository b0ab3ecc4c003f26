import { expect, test } from "vitest";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import {
  isRevoked,
  linkUse,
  mendRevoked,
  revoke,
  revokedLinks,
} from "../../../src/host/store/links.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";

const NOW = Date.UTC(2027, 4, 8);

const linksWithFeeds = (sql: SqlStore) => linkUse(sql).used;

test("revoking closes one link and leaves the rest; again is no mistake and keeps the first instant", async () => {
  await inStore("weir", (sql) => {
    storeFeed(sql, writtenFeed("x", { link: "helper-imre-1" }));
    storeFeed(sql, writtenFeed("x", { link: "helper-imre-2" }));
    revoke(sql, "helper-imre-1", NOW);
    revoke(sql, "helper-imre-1", NOW + 1);
    revoke(sql, "reader-1", NOW + 2);
    expect(revokedLinks(sql)).toEqual(["helper-imre-1", "reader-1"]);
    expect([isRevoked(sql, "reader-1"), isRevoked(sql, "reader-2")]).toEqual([true, false]);
    expect(linkUse(sql).revoked).toEqual([
      { link: "reader-1", at: NOW + 2 },
      { link: "helper-imre-1", at: NOW },
    ]);
    expect(linksWithFeeds(sql)).toEqual(["helper-imre-2"]);
  });
});

test("a link is in use once a feed was written for it, whichever", async () => {
  await inStore("brook", (sql) => {
    expect(linksWithFeeds(sql)).toEqual([]);
    for (const feed of ["tasks.ics", "sessions.ics"])
      storeFeed(sql, writtenFeed("x", { link: "helper-1", feed }));
    expect(linksWithFeeds(sql)).toEqual(["helper-1"]);
  });
});

test("of a revoked link one of whose two names was damaged neither opens", async () => {
  await inStore("two-names", (sql) => {
    for (const column of ["link", "copy"]) {
      revoke(sql, `helper-${column}-1`, NOW);
      sql.rows(`UPDATE revoked SET ${column} = 'x' WHERE link = ?1`, `helper-${column}-1`);
      expect(isRevoked(sql, `helper-${column}-1`)).toBe(true);
      expect(revokedLinks(sql)).toContain(`helper-${column}-1`);
      expect([mendRevoked(sql), mendRevoked(sql)]).toEqual([1, 0]);
      expect(isRevoked(sql, `helper-${column}-1`)).toBe(true);
    }
  });
});
