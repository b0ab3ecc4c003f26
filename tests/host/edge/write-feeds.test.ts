import { describe, expect, test, vi } from "vitest";
import { feedLedger, feedRecord } from "../../../src/host/store/feeds.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { ask, engine, inStore, linkTo, MORNING, PLAN, publish, shellWith } from "../web/garden.ts";

const shell = shellWith();
const HOUR = 3_600_000;

const feedOf = async (garden: string, feed = "tasks.ics") =>
  `${await linkTo(garden, "owner")}${feed}`;

const textOf = async (garden: string, feed = "tasks.ics") =>
  (await ask(shell, await feedOf(garden, feed))).text();

const KEY = { link: "owner-1", feed: "tasks.ics" };

describe("writing a feed", () => {
  test("builds the year once for all feeds", async () => {
    const build = vi.fn(engine.build);
    const watched = { ...shell, engine: { ...engine, build } };
    await publish(watched, "meadow");
    for (const feed of ["tasks.ics", "household.ics", "warnings.ics"])
      await ask(watched, await feedOf("meadow", feed));
    expect(build).toHaveBeenCalledTimes(1);
  });

  test("gives changed events a later stamp, of the plan's saving, and leaves the rest", async () => {
    await publish(shell, "lea");
    await textOf("lea");
    const later = { ...shell, now: () => MORNING + HOUR };
    await publish(later, "lea", PLAN.replace("2027-05-20", "2027-05-21"), 1);
    const text = await textOf("lea");
    expect(text.match(/DTSTAMP:20270507T070000Z/g)).toHaveLength(1);
    expect(text.match(/DTSTAMP:20270507T060000Z/g)).toHaveLength(3);
  });

  test("begins a ledger that is lost anew, with now as the cause, and what stands keeps its words", async () => {
    await publish(shell, "moor");
    await textOf("moor");
    await inStore("moor", (sql) => sql.rows("DELETE FROM ledger"));
    const later = { ...shell, now: () => MORNING + HOUR };
    await publish(later, "moor", PLAN.replace("Thin beets", "Thin carrots"), 1);
    const text = await textOf("moor");
    expect(text).toContain("SUMMARY:Thin carrots");
    expect(text).toContain("SUMMARY:Hill potatoes");
    expect(text).not.toContain("DTSTAMP:20270507T060000Z");
    const ledger = await inStore("moor", (sql) => feedLedger(sql, KEY));
    expect(Object.keys(ledger?.entries ?? {}).length).toBeGreaterThan(2);
  });

  test("begins none for a bed that no plan has, and none over a revoked link", async () => {
    await publish(shell, "mill");
    expect((await ask(shell, await feedOf("mill", "bed/no-such-bed.ics"))).status).toBe(404);
    await inStore("mill", (sql) => revoke(sql, "owner-1", MORNING));
    expect((await ask(shell, await feedOf("mill"))).status).toBe(404);
    expect(await inStore("mill", (sql) => sql.rows("SELECT * FROM feeds"))).toEqual([]);
  });

  test("forgets a feed that its link has no more", async () => {
    await publish(shell, "weir");
    await textOf("weir");
    await inStore("weir", (sql) => sql.rows("UPDATE feeds SET feed = 'old-name.ics'"));
    await ask({ ...shell, now: () => MORNING + 24 * HOUR }, await linkTo("weir", "owner"));
    expect(await inStore("weir", (sql) => sql.rows("SELECT * FROM feeds"))).toEqual([]);
  });

  test("where nothing has changed writes neither bytes nor ledger", async () => {
    await publish(shell, "still");
    await textOf("still");
    const before = await inStore("still", (sql) => {
      sql.rows("UPDATE ledger SET days = 'untouched', sum = NULL");
      return feedRecord(sql, KEY);
    });
    await publish(shell, "still", `${PLAN}doubt\n`, 1);
    const after = await inStore("still", (sql) => feedRecord(sql, KEY));
    expect(after).toEqual({ ...before, build: 2 });
    const marks = await inStore("still", (sql) => sql.rows("SELECT DISTINCT days FROM ledger"));
    expect(marks).toEqual([{ days: "untouched" }]);
  });
});
