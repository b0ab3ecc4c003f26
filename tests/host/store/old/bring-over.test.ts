import { env } from "cloudflare:workers";
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { diaryLines } from "../../../../src/host/store/diary.ts";
import { feedLedger } from "../../../../src/host/store/feeds.ts";
import { gardenRecord } from "../../../../src/host/store/gardens.ts";
import { isGone } from "../../../../src/host/store/leaving.ts";
import { linkUse } from "../../../../src/host/store/links.ts";
import { allVersions, savedPlan } from "../../../../src/host/store/plans.ts";
import { publishedState, storedTasks } from "../../../../src/host/store/tasks.ts";
import { inStore } from "../../in-store.ts";
import { ports } from "../../ports.ts";
import { ask, engine, linkTo, MORNING, PLAN, publish, shellWith } from "../../web/garden.ts";
import { formerStore, packed, put } from "./former.ts";

let db: D1Database;

beforeAll(async () => {
  db = await formerStore();
});
beforeEach(() => {
  ports.former = () => db;
});
afterEach(() => vi.restoreAllMocks());

const SAVED_AT = MORNING - 86_400_000;
const THIN = "2027/thin-beets/do/1";
const OLD = PLAN.replace("Hill potatoes", "Hill all potatoes");
const shell = shellWith();

const planJson = (text: string) => {
  const at = { garden: "old", file: "old/2027.yaml", text };
  return JSON.stringify(engine.readPlan(at));
};

const read = engine.readPlan({ garden: "old", file: "old/2027.yaml", text: PLAN });
if (read === null) throw new Error("the plan has a problem");

/** The year as the former code told it a day ago, and a feed of it: every event thrice changed. */
const TOLD = engine.build({
  ...{ id: "old", plans: [read], instant: SAVED_AT, published: {}, baseline: null, weather: null },
});

const written = engine.writeFeed({
  ...{ garden: "old", name: "Quarry Lane, all tasks", events: TOLD.events, link: null },
  choice: { of: "household", kind: "tasks", bed: null, quiet: false, reader: false },
  ...{ clock: "America/Denver", cause: SAVED_AT, now: SAVED_AT, ledger: null },
});

const FED = { ...written, text: written.text.replaceAll("SEQUENCE:0", "SEQUENCE:3") };

/** A ledger as it was kept before entries were called by their fingerprints. */
const ledger = {
  entries: Object.fromEntries(
    Object.entries(FED.ledger.entries).map(([key, { fingerprint, ...rest }]) => {
      const text = rest.text?.replace("SEQUENCE:0", "SEQUENCE:3") ?? null;
      return [key, { ...rest, print: fingerprint, sequence: 3, text }];
    }),
  ),
};

/** A garden as the former code filled its rows: two versions of a plan, a diary, a revoked link, a feed. */
async function fill(garden: string): Promise<void> {
  await put(db, "gardens", {
    ...{ id: garden, changed_at: SAVED_AT, origin: "https://garden.example", owner: 123_456 },
    ...{ standing: JSON.stringify(TOLD.publishedState), events: JSON.stringify(TOLD.events) },
    before: JSON.stringify({ "imre/2027-05-01": { tasks: [THIN], at: SAVED_AT } }),
  });
  for (const [version, text] of [OLD, PLAN].entries())
    await put(db, "plans", {
      ...{ garden, year: 2027, version: version + 1, text, beside: "{}", plan: planJson(text) },
      ...{ file: "old/2027.yaml", read_by: "former code", published: null, saved_at: SAVED_AT },
    });
  const said = { garden, day: "2027-05-06", said_at: SAVED_AT + 1000 };
  await put(db, "diary", { ...said, text: "done", task: THIN, person: "imre" });
  await put(db, "diary", { ...said, text: "a fox came by", task: null, person: null });
  await put(db, "revoked", { garden, link: "helper-oda-1", revoked_at: SAVED_AT });
  await put(db, "feeds", {
    ...{ garden, link: "owner-123456", feed: "tasks.ics", version: 9, body: packed(FED.text) },
    ...{ size: new TextEncoder().encode(FED.text).length, print: "former", revision: 4 },
    ...{ last_modified: SAVED_AT, ledger: packed(JSON.stringify(ledger)) },
    ...{ code: "former code", until: SAVED_AT + 1 },
  });
}

describe("a garden of the former store", () => {
  const owner = () => linkTo("old", "owner", null, 123_456);

  test("answers its first poll with the bytes it had, under the tag it had", async () => {
    await fill("old");
    const answer = await ask(shell, `${await owner()}tasks.ics`);
    expect([answer.status, answer.headers.get("etag")]).toEqual([200, '"former.0"']);
    expect(await answer.text()).toBe(FED.text);
  });

  test("is here with every version, its diary, its links and how its tasks were published", async () => {
    await inStore("old", (sql) => {
      expect(gardenRecord(sql)).toMatchObject({ id: "old", owner: 123_456 });
      expect(allVersions(sql).map(({ text }) => text)).toEqual([OLD, PLAN]);
      expect(savedPlan(sql, 2027)).toMatchObject({ version: 2, savedAt: SAVED_AT });
      expect(diaryLines(sql).map(({ text, task }) => [text, task])).toEqual([
        ["done", THIN],
        ["a fox came by", null],
      ]);
      const { revoked, people } = linkUse(sql);
      expect([revoked, people]).toEqual([
        [{ link: "helper-oda-1", at: SAVED_AT }],
        ["imre", "oda"],
      ]);
      expect(Object.keys(publishedState(storedTasks(sql)))).toContain(THIN);
    });
  });

  test("is written anew behind that, with no sequence falling and every UID as it was", async () => {
    const text = await (await ask(shell, `${await owner()}tasks.ics`)).text();
    const uids = (calendar: string) =>
      [...calendar.matchAll(/^UID:(.*)\r$/gm)].map(([, uid]) => uid);
    expect(uids(text).sort()).toEqual(uids(FED.text).sort());
    const sequences = [...text.matchAll(/^SEQUENCE:(\d+)/gm)].map(([, nth]) => Number(nth));
    expect(Math.min(...sequences)).toBeGreaterThanOrEqual(3);
    const kept = await inStore("old", (sql) =>
      feedLedger(sql, { link: "owner-123456", feed: "tasks.ics" }),
    );
    expect(Object.keys(kept?.entries ?? {})).toEqual(
      expect.arrayContaining(Object.keys(ledger.entries)),
    );
  });

  test("closes the links that were closed, and remembers what phones may still show", async () => {
    for (const path of [await linkTo("old", "owner"), await linkTo("old", "helper", "oda")])
      expect((await ask(shell, path)).status).toBe(404);
    const former = await ask(shell, `${await linkTo("old", "helper", "imre")}on/imre/2027-05-01`);
    expect(former.status).toBe(200);
    expect(await former.text()).toContain("Thin beets");
    expect(await inStore("old", (sql) => sql.rows("SELECT event FROM former"))).toEqual([
      { event: "imre/2027-05-01" },
    ]);
  });

  test("is copied once: what is written here stays, whatever the former store says", async () => {
    await publish(shell, "old", PLAN.replace("Thin", "Thin out"), 2);
    await db.prepare("UPDATE gardens SET owner = 1").run();
    expect((await ask(shell, await owner())).status).toBe(200);
    expect((await inStore("old", (sql) => savedPlan(sql, 2027)))?.version).toBe(3);
  });
});

test("a garden that was deleted there stays deleted", async () => {
  await put(db, "gone", { garden: "ended", gone_at: SAVED_AT });
  expect((await ask(shell, await linkTo("ended", "owner"))).status).toBe(404);
  expect(await inStore("ended", isGone)).toBe(true);
  expect((await publish(shell, "ended")).status).toBe(410);
});

test("a garden that is not there can be made here, and is looked for until it is", async () => {
  expect((await ask(shell, await linkTo("new", "owner"))).status).toBe(404);
  expect((await publish(shell, "new")).status).toBe(201);
});

test("a former store that can't be read leaves nothing here, and is asked again", async () => {
  await fill("late");
  vi.spyOn(console, "error").mockReturnValue();
  const feed = `${await linkTo("late", "owner", null, 123_456)}tasks.ics`;
  ports.former = () => ({
    prepare: (query) => db.prepare(query),
    batch: () => Promise.reject(new Error("the former store is down")),
  });
  expect((await ask(shell, feed)).status).toBe(503);
  const kept = { headers: { "if-none-match": '"former.0"' } };
  expect((await ask(shell, feed, kept)).status).toBe(304);
  expect(await inStore("late", gardenRecord)).toBeNull();
  ports.former = () => db;
  expect((await ask(shell, feed, kept)).status).toBe(304);
  expect((await inStore("late", gardenRecord))?.id).toBe("late");
});

test("rows that can't be read come as far as they can, and the rest is built anew", async () => {
  await fill("cut");
  await db
    .prepare(
      `UPDATE gardens SET standing = '{"20', events = '[{"key', before = '{"a' WHERE id = 'cut'`,
    )
    .run();
  await db.prepare("UPDATE feeds SET ledger = 'AAAA' WHERE garden = 'cut'").run();
  await db.prepare("UPDATE plans SET plan = '{\"na' WHERE garden = 'cut' AND version = 1").run();
  const owner = await linkTo("cut", "owner", null, 123_456);
  expect(await (await ask(shell, `${owner}tasks.ics`)).text()).toBe(FED.text);
  expect(await (await ask(shell, `${owner}tasks.ics`)).text()).toContain("END:VCALENDAR");
  expect((await ask(shell, owner)).status).toBe(200);
  expect(await inStore("cut", (sql) => allVersions(sql).length)).toBe(2);
});

test("many requests at once share one copy", async () => {
  await fill("busy");
  const batch = vi.fn(db.batch.bind(db));
  ports.former = () => ({
    prepare: (query) => db.prepare(query),
    batch: batch as D1Database["batch"],
  });
  const owner = await linkTo("busy", "owner", null, 123_456);
  const answers = await Promise.all([1, 2, 3, 4, 5].map(() => ask(shell, `${owner}tasks.ics`)));
  expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
  expect(batch).toHaveBeenCalledTimes(1);
  expect(await inStore("busy", (sql) => diaryLines(sql))).toHaveLength(2);
});

test("the former store's own tables are what its migrations make", () => {
  expect(env.MIGRATIONS.map(({ name }) => name)).toEqual(["0001_gardens.sql", "0002_leaving.sql"]);
});
