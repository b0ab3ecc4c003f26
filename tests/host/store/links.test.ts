import { expect, test } from "vitest";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { isRevoked, linkUse, revoke, revokedLinks } from "../../../src/host/store/links.ts";
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
