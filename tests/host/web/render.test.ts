import { env } from "cloudflare:workers";
import { afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { unpack } from "../../../src/host/store/bytes.ts";
import { loadFeeds, pollFeed } from "../../../src/host/store/feeds.ts";
import type { AppContext } from "../../../src/host/web/app-context.ts";
import { isStale, logged, render, renderWaiting } from "../../../src/host/web/render.ts";
import { core, MORNING, PLAN, publish, shellWith } from "./garden.ts";

let shell: AppContext;

beforeAll(async () => {
  shell = await shellWith();
});

afterEach(() => vi.restoreAllMocks());

const keyOf = (garden: string, feed = "tasks.ics") => ({ garden, link: "owner-1", feed });

async function textOf(garden: string, feed = "tasks.ics"): Promise<string | null> {
  const polled = await pollFeed(env.DB, keyOf(garden, feed));
  const packed = polled?.stored?.packed ?? null;
  return packed === null ? null : unpack(packed);
}

async function begin(garden: string, ...feeds: string[]): Promise<void> {
  await publish(shell, garden);
  for (const feed of feeds) await render(shell, garden, keyOf(garden, feed));
}

/** As a garden is that was never told. */
const untold = (garden: string) =>
  env.DB.prepare("UPDATE gardens SET events = NULL WHERE id = ?1").bind(garden).run();

describe("writing a feed", () => {
  test("keeps what the garden was told as", async () => {
    await begin("quarry-lane", "tasks.ics");
    const loaded = await loadFeeds(env.DB, "quarry-lane", keyOf("quarry-lane"));
    expect(Object.keys(loaded?.garden.standing ?? {})).toContain("2027/thin-beets/do/1");
    expect(loaded?.garden.standingVersion).toBe(1);
  });

  test("tells a garden once for all its feeds, and goes on from there after one was cut short", async () => {
    await publish(shell, "meadow");
    await untold("meadow");
    const tell = vi.fn(core.tell);
    const cut: typeof core.writeCalendar = () => {
      throw new Error("out of time");
    };
    const short = { ...shell, core: { ...core, tell, writeCalendar: cut } };
    await expect(render(short, "meadow", keyOf("meadow"))).rejects.toThrow("out of time");
    expect(await textOf("meadow")).toBeNull();
    const whole = { ...shell, core: { ...core, tell } };
    await render(whole, "meadow", keyOf("meadow"));
    await render(whole, "meadow", keyOf("meadow", "household.ics"));
    expect(tell).toHaveBeenCalledTimes(1);
    expect(await textOf("meadow")).toContain("END:VCALENDAR");
  });

  test("reckons the usual year when a plan is saved, and again only after a deploy", async () => {
    const usualOf = vi.fn(core.usualOf);
    const watched = { ...shell, core: { ...core, usualOf } };
    await publish(watched, "orchard");
    await render(watched, "orchard", keyOf("orchard"));
    await render(watched, "orchard", keyOf("orchard", "warnings.ics"));
    expect(usualOf).toHaveBeenCalledTimes(1);
    await render({ ...watched, code: "code 2" }, "orchard", "stale");
    await render({ ...watched, code: "code 2" }, "orchard", keyOf("orchard", "household.ics"));
    expect(usualOf).toHaveBeenCalledTimes(2);
  });

  test("tells the garden again when a plan is saved meanwhile", async () => {
    await publish(shell, "brook");
    await untold("brook");
    let saved = false;
    const db: D1Database = {
      prepare: (query) => env.DB.prepare(query),
      batch: async <Row>(statements: readonly D1PreparedStatement[]) => {
        const loaded = await env.DB.batch<Row>(statements);
        if (!saved) await publish(shell, "brook", PLAN.replace("Thin beets", "Thin carrots"), 1);
        saved = true;
        return loaded;
      },
    };
    const slow = { ...shell, db };
    await render(slow, "brook", keyOf("brook"));
    expect(saved).toBe(true);
    expect(await textOf("brook")).toContain("Thin carrots");
    expect(await textOf("brook")).not.toContain("Thin beets");
  });

  test("gives up, and stores nothing, when the garden never keeps still", async () => {
    await publish(shell, "restless");
    await untold("restless");
    let version = 0;
    const tell: typeof core.tell = (garden, horizon, standing) => {
      version += 1;
      return { ...core.tell(garden, horizon, standing), publishedState: { ...standing } };
    };
    const db: D1Database = {
      prepare: (query) =>
        env.DB.prepare(query.replace("standing_version = ?3", "standing_version = ?3 + 99")),
      batch: (statements) => env.DB.batch(statements),
    };
    const changing = { ...shell, db, core: { ...core, tell: restless(tell) } };
    const done = render(changing, "restless", keyOf("restless"));
    await expect(done).rejects.toThrow("changed each time");
    expect(version).toBe(3);
    expect(await textOf("restless")).toBeNull();
  });

  test("reads a plan again that an older code read, once, and keeps what no longer passes", async () => {
    await begin("weir", "tasks.ics");
    const read = vi.fn(core.readPlan);
    const deployed = { ...shell, code: "code 2", core: { ...core, readPlan: read } };
    await render(deployed, "weir", "stale");
    await render(deployed, "weir", "stale");
    expect(read).toHaveBeenCalledTimes(1);

    const stricter = vi.fn(() => ({ plan: null, problems: [] }));
    const third = { ...shell, code: "code 3", core: { ...core, readPlan: stricter } };
    await render(third, "weir", "stale");
    expect(stricter).toHaveBeenCalledTimes(1);
    const loaded = await loadFeeds(env.DB, "weir", keyOf("weir"));
    expect(loaded?.feeds[0]?.code).toBe("code 3");
    expect(loaded?.garden.plans[0]?.plan.name).toBe("Quarry Lane");
  });

  test("gives changed events a later stamp, of the plan's saving, and leaves the rest", async () => {
    await begin("lea", "tasks.ics");
    const later = { ...shell, now: () => MORNING + 3_600_000 };
    await publish(later, "lea", PLAN.replace("2027-05-20", "2027-05-21"), 1);
    const text = (await textOf("lea")) ?? "";
    expect(text.match(/DTSTAMP:20270507T070000Z/g)).toHaveLength(1);
    expect(text.match(/DTSTAMP:20270507T060000Z/g)).toHaveLength(3);
  });

  test("does nothing for a garden that is not there, nor for a bed that no plan has", async () => {
    await render(shell, "nowhere", keyOf("nowhere"));
    await begin("mill", "bed/no-such-bed.ics");
    expect(await textOf("mill", "bed/no-such-bed.ics")).toBeNull();
  });

  test("begins a ledger that was cut short anew, with now as the cause, and what stands keeps its words", async () => {
    await begin("moor", "tasks.ics");
    await env.DB.prepare(
      "UPDATE feeds SET ledger = substr(ledger, 1, 40) WHERE garden = 'moor'",
    ).run();
    const later = { ...shell, now: () => MORNING + 3_600_000 };
    await publish(later, "moor", PLAN.replace("Thin beets", "Thin carrots"), 1);
    const text = (await textOf("moor")) ?? "";
    expect(text).toContain("SUMMARY:Thin carrots");
    expect(text).toContain("SUMMARY:Hill potatoes");
    expect(text).not.toContain("DTSTAMP:20270507T060000Z");
    const loaded = await loadFeeds(env.DB, "moor", keyOf("moor"));
    expect(Object.keys(loaded?.feeds[0]?.ledger?.entries ?? {}).length).toBeGreaterThan(2);
  });

  test.each(["events", "standing", "usual"])(
    "reckons %s anew that were cut short",
    async (what) => {
      const garden = `cut-${what}`;
      await begin(garden, "tasks.ics");
      const before = await textOf(garden);
      const cut = `UPDATE gardens SET ${what} = '{"a":' WHERE id = ?1`;
      await env.DB.prepare(cut).bind(garden).run();
      await render(shell, garden, keyOf(garden, "household.ics"));
      await render({ ...shell, code: "code 2" }, garden, keyOf(garden));
      expect(await textOf(garden)).toBe(before);
      expect(await textOf(garden, "household.ics")).toContain("END:VCALENDAR");
      const row = await env.DB.prepare(`SELECT ${what} FROM gardens WHERE id = ?1`)
        .bind(garden)
        .first();
      expect(JSON.stringify(row)).not.toContain('{\\"a\\":"');
    },
  );

  test("leaves a fresh feed alone", async () => {
    await begin("ford", "tasks.ics");
    const told = vi.fn(core.tell);
    const watched = { ...shell, core: { ...core, tell: told } };
    await render(watched, "ford", keyOf("ford"));
    await render(watched, "ford", "stale");
    expect(told).not.toHaveBeenCalled();
  });
});

describe("the cron", () => {
  test("writes what waits in every garden, past one that fails", async () => {
    await env.DB.prepare("DELETE FROM gardens").run();
    await begin("first", "tasks.ics", "warnings.ics");
    await begin("second", "tasks.ics");
    const said = vi.spyOn(console, "error").mockReturnValue();
    const tell: typeof core.tell = (garden, horizon, standing) => {
      if (garden.id === "first") throw new Error("no such crop");
      return core.tell(garden, horizon, standing);
    };
    const now = () => MORNING + 86_400_000;
    await renderWaiting({ ...shell, now, core: { ...core, tell } });
    expect(said).toHaveBeenCalledTimes(1);
    expect(await textOf("second")).toContain("DTSTART;VALUE=DATE:20270509");

    await renderWaiting({ ...shell, now });
    for (const feed of ["tasks.ics", "warnings.ics"]) {
      expect(await textOf("first", feed)).toContain("DTSTART;VALUE=DATE:20270509");
    }
  });

  test("leaves feeds that can be written no worse for one that can't", async () => {
    await env.DB.prepare("DELETE FROM gardens").run();
    await begin("third", "quiet/tasks.ics", "tasks.ics");
    const said = vi.spyOn(console, "error").mockReturnValue();
    const writeCalendar: typeof core.writeCalendar = (writing) => {
      if (writing.quiet) throw new Error("too quiet");
      return core.writeCalendar(writing);
    };
    const now = () => MORNING + 86_400_000;
    await renderWaiting({ ...shell, now, core: { ...core, writeCalendar } });
    expect(said).toHaveBeenCalledTimes(1);
    expect(await textOf("third")).toContain("DTSTART;VALUE=DATE:20270509");
    expect(await textOf("third", "quiet/tasks.ics")).toContain("DTSTART;VALUE=DATE:20270508");
  });
});

test("a feed is stale once garden, code or horizon is another", () => {
  const made = { revision: 3, code: "code 1", until: MORNING + 1 };
  expect(isStale(shell, 3, made)).toBe(false);
  expect(isStale(shell, 4, made)).toBe(true);
  expect(isStale({ ...shell, code: "code 2" }, 3, made)).toBe(true);
  expect(isStale({ ...shell, now: () => MORNING + 1 }, 3, made)).toBe(true);
});

test("work that fails is logged and says so", async () => {
  const said = vi.spyOn(console, "error").mockReturnValue();
  expect(await logged("quarry-lane", () => Promise.reject(new Error("no")))).toBe(false);
  expect(await logged("quarry-lane", async () => undefined)).toBe(true);
  expect(said).toHaveBeenCalledTimes(1);
});

/** A standing that differs each time it is told. */
function restless(tell: typeof core.tell): typeof core.tell {
  let times = 0;
  return (garden, horizon, standing) => {
    const told = tell(garden, horizon, standing);
    times += 1;
    const restless = { day: times } as unknown as (typeof told.publishedState)[string];
    return { ...told, publishedState: { restless } };
  };
}
