import { env } from "cloudflare:workers";
import { beforeAll, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { addWords } from "../../../src/host/store/diary.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { loadStoredGarden } from "../../../src/host/store/gardens.ts";
import { deleteGarden, isGone } from "../../../src/host/store/leaving.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { savedPlan, savePlan } from "../../../src/host/store/plans.ts";
import { firstOf } from "./made.ts";

const NOW = Date.UTC(2027, 4, 8);
async function rowsOf(garden: string): Promise<number> {
  const tables = ["plans", "diary", "feeds", "revoked"];
  const counts = await Promise.all(
    tables.map((table) =>
      env.DB.prepare(`SELECT count(*) AS n FROM ${table} WHERE garden = ?1`)
        .bind(garden)
        .first<{ readonly n: number }>(),
    ),
  );
  return counts.reduce((sum, count) => sum + (count?.n ?? 0), 0);
}

beforeAll(async () => {
  for (const garden of ["weir", "brook"]) {
    await savePlan(env.DB, firstOf(garden));
    const line = { day: dayOrThrow(2027, 5, 8), text: "carrots up", task: null, person: null };
    await addWords(env.DB, garden, { ...line, saidAt: NOW });
    await revoke(env.DB, garden, "reader-1", NOW);
    const made = { revision: 1, code: "code 1", until: NOW };
    const written = { text: "x", print: "p", lastModified: NOW, ledger: {}, ...made };
    const key = { garden, link: "owner-1", feed: "tasks.ics" };
    await storeFeed(env.DB, key, { over: null, written: written as never });
  }
});

test("a garden deleted takes its plans, diary, feeds and links with it, and no other's", async () => {
  expect(await rowsOf("weir")).toBe(4);
  await deleteGarden(env.DB, "weir", NOW);
  expect(await loadStoredGarden(env.DB, "weir")).toBeNull();
  expect(await rowsOf("weir")).toBe(0);
  expect(await rowsOf("brook")).toBe(4);
  expect([await isGone(env.DB, "weir"), await isGone(env.DB, "brook")]).toEqual([true, false]);
});

test("it is never made again under that id, so that no old link opens anything", async () => {
  expect(await savePlan(env.DB, firstOf("weir"))).toBeNull();
  expect(await savedPlan(env.DB, "weir", 2027)).toBeNull();
  expect(await loadStoredGarden(env.DB, "weir")).toBeNull();
});

test("deleting it again is no mistake", async () => {
  await deleteGarden(env.DB, "weir", NOW + 1);
  expect(await isGone(env.DB, "weir")).toBe(true);
});
