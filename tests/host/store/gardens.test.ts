import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import type { PublishedState } from "../../../src/engine/schedule/scheduled-task.ts";
import {
  eventsIn,
  gardenIn,
  loadStoredGarden,
  type StoredGarden,
  storeBaseline,
  storeSchedule,
} from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { firstOf, SAVED_AT } from "./made.ts";

const standing = { "2027/beet/thin/1": { day: 20950 } } as unknown as PublishedState;

const keepStanding = (db: D1Database, garden: StoredGarden, told: PublishedState) =>
  storeSchedule(db, garden, {
    events: [],
    publishedState: told,
    code: "code 1",
    until: SAVED_AT + 1,
    now: SAVED_AT,
  });

async function makeGarden(garden: string): Promise<void> {
  await savePlan(env.DB, firstOf(garden));
}

async function stored(garden: string) {
  const opened = await loadStoredGarden(env.DB, garden);
  if (opened === null) throw new Error("no such garden");
  return opened.stored;
}

function say(garden: string, text: string, saidAt = SAVED_AT): Promise<unknown> {
  return env.DB.prepare("INSERT INTO diary (garden, day, text, said_at) VALUES (?1, ?2, ?3, ?4)")
    .bind(garden, "2027-05-24", text, saidAt)
    .run();
}

describe("a garden's record", () => {
  beforeAll(() => makeGarden("quarry-lane"));

  test("is null for a garden that is not there", async () => {
    expect(await loadStoredGarden(env.DB, "nowhere")).toBeNull();
  });

  test("keeps what was told, and an equal standing is not written again", async () => {
    expect(await keepStanding(env.DB, await stored("quarry-lane"), standing)).toBe(true);
    expect(await keepStanding(env.DB, await stored("quarry-lane"), standing)).toBe(true);
    expect(await stored("quarry-lane")).toMatchObject({ standing, standingVersion: 1 });
  });

  test("keeps the events told, with what they were made from; none before", async () => {
    await makeGarden("hill");
    const before = await stored("hill");
    expect([before.schedule, eventsIn(before)]).toEqual([null, null]);
    const events = [{ key: "2027/beet/thin/1" }] as unknown as readonly Event[];
    await storeSchedule(env.DB, before, {
      events,
      publishedState: standing,
      code: "code 2",
      until: 7,
      now: SAVED_AT,
    });
    const after = await stored("hill");
    expect(after.schedule).toMatchObject({ revision: before.revision, code: "code 2", until: 7 });
    expect(eventsIn(after)).toEqual(events);
  });

  test("keeps the usual days of its plans, of no account once another plan is in force", async () => {
    await makeGarden("glen");
    const usual = { "2027/beet/thin/1": 20950 as Day };
    await storeBaseline(env.DB, await stored("glen"), usual);
    const kept = await stored("glen");
    expect([kept.usual, gardenIn(kept).baseline]).toEqual([usual, usual]);
    await savePlan(env.DB, firstOf("glen", { year: 2028 }));
    const after = await stored("glen");
    expect(after.usual).toBeNull();
    expect(gardenIn(after)).toEqual({ id: "glen", plans: after.plans.map((saved) => saved.plan) });
  });

  test("counts what was reckoned and can't be read as never kept", async () => {
    await makeGarden("fen");
    const before = await stored("fen");
    await storeSchedule(env.DB, before, {
      events: [],
      publishedState: standing,
      code: "code 1",
      until: 7,
      now: SAVED_AT,
    });
    await storeBaseline(env.DB, before, { "2027/beet/thin/1": 20950 as Day });
    await env.DB.prepare(
      `UPDATE gardens SET events = '[{"key', standing = '{"20', usual = '{"2' WHERE id = 'fen'`,
    ).run();
    const after = await stored("fen");
    expect(after).toMatchObject({ standing: {}, usual: null, standingVersion: 1 });
    expect(eventsIn(after)).toBeNull();
    expect(await keepStanding(env.DB, after, standing)).toBe(true);
  });

  test("refuses a standing told before another was kept", async () => {
    const before = await stored("quarry-lane");
    expect(await keepStanding(env.DB, before, {})).toBe(true);
    expect(await keepStanding(env.DB, { ...before, standing: {} }, standing)).toBe(false);
    expect((await stored("quarry-lane")).standing).toEqual({});
  });

  test("refuses a standing told before the diary grew", async () => {
    const before = await stored("quarry-lane");
    await say("quarry-lane", "carrots up");
    expect(await keepStanding(env.DB, before, standing)).toBe(false);
  });
});

describe("the diary", () => {
  beforeAll(() => makeGarden("brook"));

  test("raises the revision and the instant of change, never back", async () => {
    const { revision } = await stored("brook");
    await say("brook", "peas up", SAVED_AT + 5000);
    await say("brook", "told late", SAVED_AT - 5000);
    const after = await stored("brook");
    expect(after).toMatchObject({ revision: revision + 2, changedAt: SAVED_AT + 5000 });
  });

  test.each([
    ["changed", "UPDATE diary SET text = 'never'"],
    ["removed", "DELETE FROM diary"],
    [
      "replaced",
      "INSERT OR REPLACE INTO diary (id, garden, day, text, said_at) SELECT id, garden, day, 'never', 0 FROM diary",
    ],
  ])("can't be %s", async (_, sql) => {
    await expect(env.DB.prepare(sql).run()).rejects.toThrow("only ever added to");
  });

  test("goes with its garden", async () => {
    await env.DB.prepare("DELETE FROM gardens WHERE id = 'brook'").run();
    const left = "SELECT count(*) AS left FROM diary WHERE garden = 'brook'";
    expect(await env.DB.prepare(left).first()).toEqual({ left: 0 });
    expect(await loadStoredGarden(env.DB, "brook")).toBeNull();
  });
});

test("a garden remembers what its events were told with before", async () => {
  await makeGarden("mill");
  const event = (key: string, tasks: readonly string[]) => ({ key, tasks }) as unknown as Event;
  const keep = async (events: readonly Event[], now: number) => {
    const { stored } = (await loadStoredGarden(env.DB, "mill")) ?? {};
    if (!stored) throw new Error("no such garden");
    const told = { events, publishedState: {}, code: "code 1", until: SAVED_AT + 1, now };
    expect(await storeSchedule(env.DB, stored, told)).toBe(true);
  };
  await keep([event("imre/2027-05-08", ["a", "b"])], SAVED_AT);
  await keep([event("imre/2027-05-08", ["a"])], SAVED_AT + 1);
  const after = (await loadStoredGarden(env.DB, "mill"))?.stored;
  expect(after?.before).toEqual({ "imre/2027-05-08": { tasks: ["b"], at: SAVED_AT + 1 } });
});
