import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import { unpack } from "../../../src/host/store/bytes.ts";
import {
  type FeedRecord,
  loadFeeds,
  noLongerWaiting,
  pollFeed,
  staleGardens,
  storeFeed,
  type WrittenFeed,
} from "../../../src/host/store/feeds.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { firstOf, SAVED_AT } from "./made.ts";

const UNTIL = SAVED_AT + 86_400_000;

async function makeGarden(garden: string): Promise<void> {
  await savePlan(env.DB, firstOf(garden));
}

const keyOf = (garden: string, feed = "tasks.ics") => ({ garden, link: "owner-1", feed });

function written(text: string, over: Partial<WrittenFeed> = {}): WrittenFeed {
  const from = { revision: 1, code: "code 1", until: UNTIL };
  return {
    text,
    print: `print of ${text}`,
    lastModified: SAVED_AT,
    ledger,
    ...from,
    ...over,
  };
}

const ledger = { entries: {} };

async function record(garden: string): Promise<FeedRecord> {
  const loaded = await loadFeeds(env.DB, garden, keyOf(garden));
  const found = loaded?.feeds[0];
  if (!found) throw new Error("nothing stored");
  return found;
}

describe("a feed's record", () => {
  beforeAll(() => makeGarden("quarry-lane"));

  test("is not there before it was written, though its garden is", async () => {
    const polled = await pollFeed(env.DB, keyOf("quarry-lane"));
    expect(polled).toEqual({ revoked: false, revision: 1, stored: null });
    expect(await pollFeed(env.DB, keyOf("nowhere"))).toBeNull();
  });

  test("gives a poll what was written, and its size in bytes", async () => {
    const text = "bäch 🥕";
    const made = { over: null, written: written(text) };
    expect(await storeFeed(env.DB, keyOf("quarry-lane"), made)).toBe(true);
    const polled = await pollFeed(env.DB, keyOf("quarry-lane"));
    expect(polled?.stored).toMatchObject({
      size: 10,
      print: `print of ${text}`,
      until: UNTIL,
    });
    expect(unpack(polled?.stored?.packed ?? "")).toBe(text);
  });

  test("brings no body along for who holds it, and for nobody else", async () => {
    const print = "print of bäch 🥕";
    const held = await pollFeed(env.DB, keyOf("quarry-lane"), print);
    expect(held?.stored).toMatchObject({ packed: null, print, size: 10 });
    const other = await pollFeed(env.DB, keyOf("quarry-lane"), "another");
    expect(other?.stored?.packed).toEqual(expect.any(String));
  });

  test("gives the next writing the ledger that was kept", async () => {
    const entry = {
      fingerprint: "p",
      sequence: 2,
      stamp: SAVED_AT,
      when: "day 1",
      text: "BEGIN:VEVENT",
    };
    const kept = { entries: { "2027/beet/thin/1": entry } };
    const over = await record("quarry-lane");
    const made = { over, written: written("second", { ledger: kept }) };
    await storeFeed(env.DB, keyOf("quarry-lane"), made);
    expect((await record("quarry-lane")).ledger).toEqual(kept);
  });

  test("cut short keeps its tag and dates, and says that its body or its ledger is no more", async () => {
    const cut = (column: string) =>
      env.DB.prepare(`UPDATE feeds SET ${column} = substr(${column}, 1, 20)`).run();
    expect(await record("quarry-lane")).toMatchObject({ whole: true });
    await cut("body");
    await cut("ledger");
    const polled = await pollFeed(env.DB, keyOf("quarry-lane"));
    expect(polled?.stored).toMatchObject({ packed: null, print: "print of second" });
    const over = await record("quarry-lane");
    expect(over).toMatchObject({ whole: false, ledger: null, version: 2 });
    expect(await storeFeed(env.DB, keyOf("quarry-lane"), { over, written: written("anew") })).toBe(
      true,
    );
    expect(await record("quarry-lane")).toMatchObject({ whole: true, ledger, version: 3 });
  });

  test("goes to the faster of two that were written over the same one", async () => {
    const over = await record("quarry-lane");
    const store = (text: string) =>
      storeFeed(env.DB, keyOf("quarry-lane"), { over, written: written(text) });
    const [one, other] = await Promise.all([store("one"), store("other")]);
    expect([one, other].filter(Boolean)).toHaveLength(1);
    const polled = await pollFeed(env.DB, keyOf("quarry-lane"));
    expect(unpack(polled?.stored?.packed ?? "")).toBe(one ? "one" : "other");
  });

  test("goes to the faster of two that found none", async () => {
    const store = (text: string) =>
      storeFeed(env.DB, keyOf("quarry-lane", "warnings.ics"), {
        over: null,
        written: written(text),
      });
    expect((await Promise.all([store("one"), store("other")])).filter(Boolean)).toHaveLength(1);
  });
});

describe("what is stale", () => {
  const now = SAVED_AT;
  const stale = async (code: string, at: number) =>
    [...(await staleGardens(env.DB, { code, now: at, most: 3 }))].sort();

  beforeAll(async () => {
    await env.DB.prepare("DELETE FROM gardens").run();
    for (const garden of ["brook", "weir"]) {
      await makeGarden(garden);
      await storeFeed(env.DB, keyOf(garden), { over: null, written: written("x") });
      await noLongerWaiting(env.DB, garden);
    }
    await makeGarden("without-feeds");
    await noLongerWaiting(env.DB, "without-feeds");
  });

  test("is nothing while garden, code and horizon hold", async () => {
    expect(await stale("code 1", now)).toEqual([]);
  });

  test("is every garden's feed once its horizon has passed or the code is new", async () => {
    expect(await stale("code 1", UNTIL)).toEqual(["brook", "weir"]);
    expect(await stale("code 2", now)).toEqual(["brook", "weir"]);
  });

  test("is a changed garden's alone, till its feeds are written anew", async () => {
    await env.DB.prepare("UPDATE gardens SET revision = 9 WHERE id = 'weir'").run();
    await noLongerWaiting(env.DB, "weir");
    expect(await stale("code 1", now)).toEqual(["weir"]);
    const loaded = await loadFeeds(env.DB, "weir", { code: "code 1", now });
    expect(loaded?.feeds.map(({ feed }) => feed)).toEqual(["tasks.ics"]);
  });

  test("is no feed of a revoked link", async () => {
    await revoke(env.DB, "weir", "owner-1", now);
    await noLongerWaiting(env.DB, "weir");
    expect(await stale("code 1", now)).toEqual([]);
    const again = await storeFeed(env.DB, keyOf("weir"), { over: null, written: written("x") });
    expect(again).toBe(false);
    const loaded = await loadFeeds(env.DB, "weir", { code: "code 1", now });
    expect(loaded?.feeds).toEqual([]);
    expect((await pollFeed(env.DB, keyOf("weir")))?.revoked).toBe(true);
  });

  test("is no more at once than a run can do, and in time each of many", async () => {
    for (let at = 0; at < 6; at += 1) {
      await makeGarden(`plot-${at}`);
      await storeFeed(env.DB, keyOf(`plot-${at}`), { over: null, written: written("x") });
    }
    const seen = new Set<string>();
    for (let run = 0; run < 60; run += 1) {
      const some = await stale("code 2", now);
      expect(some).toHaveLength(3);
      for (const garden of some) seen.add(garden);
    }
    expect(seen.size).toBe(7);
  });
});
