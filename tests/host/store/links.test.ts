import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { loadStoredGarden } from "../../../src/host/store/gardens.ts";
import { linkUse, revoke } from "../../../src/host/store/links.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { firstOf } from "./made.ts";

const NOW = Date.UTC(2027, 4, 8);

async function makeGarden(garden: string): Promise<void> {
  await savePlan(env.DB, firstOf(garden));
}

test("revoking closes one link and leaves the rest; again is no mistake and keeps the first instant", async () => {
  await makeGarden("weir");
  await revoke(env.DB, "weir", "helper-imre-1", NOW);
  await revoke(env.DB, "weir", "helper-imre-1", NOW + 1);
  await revoke(env.DB, "weir", "reader-1", NOW + 2);
  expect((await loadStoredGarden(env.DB, "weir"))?.revoked).toEqual(["helper-imre-1", "reader-1"]);
  expect((await linkUse(env.DB, "weir")).revoked).toEqual([
    { link: "reader-1", at: NOW + 2 },
    { link: "helper-imre-1", at: NOW },
  ]);
});

test("a link is in use once a feed was written for it, whichever", async () => {
  await makeGarden("brook");
  const made = { revision: 1, code: "code 1", until: NOW };
  const written = { text: "x", print: "p", lastModified: NOW, ledger: {}, ...made } as never;
  for (const feed of ["tasks.ics", "sessions.ics"])
    await storeFeed(env.DB, { garden: "brook", link: "helper-1", feed }, { over: null, written });
  expect((await linkUse(env.DB, "brook")).used).toEqual(["helper-1"]);
  expect((await linkUse(env.DB, "weir")).used).toEqual([]);
});
