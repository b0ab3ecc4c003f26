import { abortAllDurableObjects, runDurableObjectAlarm, runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { afterEach, describe, expect, test, vi } from "vitest";
import { buildRecord } from "../../../src/host/store/build.ts";
import { diaryLines } from "../../../src/host/store/diary.ts";
import { ports } from "../ports.ts";
import {
  ask,
  engine,
  inStore,
  linkTo,
  MORNING,
  PLAN,
  publish,
  type Shell,
  settled,
  shellWith,
} from "../web/garden.ts";

afterEach(() => {
  vi.restoreAllMocks();
  ports.pause = async () => undefined;
});

const shell = shellWith();
const DAY = 86_400_000;

const alarmOf = (garden: string) =>
  runInDurableObject(env.GARDENS.getByName(garden), (_, { storage }) => storage.getAlarm());

const ringAlarm = (garden: string) => runDurableObjectAlarm(env.GARDENS.getByName(garden));

const build = (garden: string) => inStore(garden, buildRecord);

const broken = (over: Partial<Shell> = {}): Shell => {
  const build = () => {
    throw new Error("no such crop");
  };
  return { ...shell, engine: { ...engine, build }, ...over };
};

/** Asks without waiting for the work behind the answer. */
const tapBehind = async (garden: string, task: string, say: string) => {
  const path = `${await linkTo(garden, "helper", "imre")}on/${task}`;
  const body = new URLSearchParams({ task, say }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  const gardenOf = (name: string) => env.GARDENS.getByName(name);
  return ask({ ...shell, gardenOf }, path, { method: "POST", body, headers });
};

describe("the alarm", () => {
  test("is set to the turn of the garden's day, and then builds the next one", async () => {
    await publish(shell, "turns");
    const tasks = `${await linkTo("turns", "owner")}tasks.ics`;
    await ask(shell, tasks);
    expect(await alarmOf("turns")).toBe(Math.ceil(MORNING / DAY) * DAY);
    ports.now = () => MORNING + DAY;
    expect(await ringAlarm("turns")).toBe(true);
    const rows = await inStore("turns", (sql) => sql.rows("SELECT build, until FROM feeds"));
    expect(rows).toEqual([{ build: 2, until: Math.ceil(MORNING / DAY) * DAY + DAY }]);
    expect(await alarmOf("turns")).toBe(Math.ceil(MORNING / DAY) * DAY + DAY);
  });

  test("and all else is right again by itself behind a clock that ran ahead for years", async () => {
    const ahead = { ...shell, now: () => MORNING + 3650 * DAY };
    await publish(ahead, "ahead");
    const tasks = `${await linkTo("ahead", "owner")}tasks.ics`;
    const then = await ask(ahead, tasks);
    const since = then.headers.get("last-modified") ?? "";
    expect(since).toContain("2037");
    await ask(shell, tasks);
    expect(await build("ahead")).toMatchObject({
      number: 2,
      until: Math.ceil(MORNING / DAY) * DAY,
    });
    expect(await alarmOf("ahead")).toBe(Math.ceil(MORNING / DAY) * DAY);
    expect((await ask(shell, tasks, { headers: { "if-modified-since": since } })).status).toBe(200);
  });

  test("that rings too early builds nothing and is set again", async () => {
    await publish(shell, "early");
    await ringAlarm("early");
    expect(await build("early")).toMatchObject({ number: 1 });
    expect(await alarmOf("early")).toBe(Math.ceil(MORNING / DAY) * DAY);
  });

  test("tries again what failed, later each time, and never gives up", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    let now = MORNING;
    await publish(broken({ now: () => now }), "fails");
    const pauses: number[] = [];
    for (let times = 0; times < 12; times += 1) {
      const next = (await alarmOf("fails")) ?? 0;
      pauses.push((next - now) / 60_000);
      now = next;
      expect(await ringAlarm("fails")).toBe(true);
    }
    expect(pauses).toEqual([1, 2, 4, 8, 16, 32, 64, 128, 256, 360, 360, 360]);
    ports.engine = async () => engine;
    now = (await alarmOf("fails")) ?? 0;
    await ringAlarm("fails");
    expect(await build("fails")).toMatchObject({ number: 1, failures: 0 });
  });

  test("rings within the minute after a change, should nothing else build it", async () => {
    await publish(shell, "owed");
    ports.pause = () => new Promise(() => undefined);
    expect((await tapBehind("owed", "2027/thin-beets/do/1", "done")).status).toBe(303);
    expect(await alarmOf("owed")).toBe(MORNING + 60_000);
    await abortAllDurableObjects();
    ports.pause = async () => undefined;
    ports.now = () => MORNING + 60_000;
    await ringAlarm("owed");
    expect(await build("owed")).toMatchObject({ number: 2, line: 1 });
  });

  test("of a garden that was deleted builds nothing and rings no more", async () => {
    await publish(shell, "gone");
    const owner = await linkTo("gone", "owner");
    const headers = { "content-type": "application/x-www-form-urlencoded" };
    await ask(shell, `${owner}leaving`, { method: "POST", body: "name=Quarry+Lane", headers });
    await ringAlarm("gone");
    expect(await alarmOf("gone")).toBeNull();
  });
});

describe("a build", () => {
  test("is owed by what is stored: the next request after a death begins it", async () => {
    await publish(shell, "died");
    ports.pause = () => new Promise(() => undefined);
    await tapBehind("died", "2027/thin-beets/do/1", "done");
    await abortAllDurableObjects();
    ports.pause = async () => undefined;
    expect(await build("died")).toMatchObject({ number: 1, line: 0 });
    await ask(shell, await linkTo("died", "owner"));
    expect(await build("died")).toMatchObject({ number: 2, line: 1 });
  });

  test("is done once or twice for ten taps in a row", async () => {
    await publish(shell, "ten");
    const was = (await build("ten")).number;
    let gathered: () => void = () => undefined;
    const gathering = new Promise<void>((done) => {
      gathered = done;
    });
    ports.pause = (ms) => (ms === 0 ? Promise.resolve() : gathering);
    for (let times = 0; times < 10; times += 1) {
      const say = times % 2 === 0 ? "done" : "undo: done";
      expect((await tapBehind("ten", "2027/thin-beets/do/1", say)).status).toBe(303);
    }
    gathered();
    await settled("ten");
    expect(await inStore("ten", (sql) => diaryLines(sql))).toHaveLength(10);
    const { number, line } = await build("ten");
    expect([number - was <= 2, line]).toEqual([true, 10]);
  });

  test("never keeps a tap's own answer waiting", async () => {
    await publish(shell, "quick");
    ports.pause = () => new Promise(() => undefined);
    expect((await tapBehind("quick", "2027/thin-beets/do/1", "done")).status).toBe(303);
    expect(await build("quick")).toMatchObject({ number: 1 });
  });
});

test("an object that wakes anew has everything that was stored", async () => {
  await publish(shell, "wakes");
  const tasks = `${await linkTo("wakes", "owner")}tasks.ics`;
  const before = await (await ask(shell, tasks)).text();
  await abortAllDurableObjects();
  expect(await (await ask(shell, tasks)).text()).toBe(before);
  await publish(shell, "wakes", PLAN.replace("Thin beets", "Thin carrots"), 1);
  expect(await (await ask(shell, tasks)).text()).toContain("Thin carrots");
});
