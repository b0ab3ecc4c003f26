import { runDurableObjectAlarm, runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { copyRecord } from "../../../src/host/store/copies.ts";
import { QUARRY } from "../../gardens.ts";
import { readStrictly } from "../../strict.ts";
import { ports } from "../ports.ts";
import { ask, inStore, linkTo, publish, settled, shellWith } from "../web/garden.ts";

/** The platform's own object storage, as it runs on this machine. */
const bucket = env.BACKUPS as R2Bucket;
const HOUR = 3_600_000;
/** Tuesday 20 April 2027, midday in the garden. */
let now = Date.UTC(2027, 3, 20, 18);
const shell = shellWith({ engine, now: () => now });

beforeEach(() => {
  ports.copies = () => bucket;
  now = Date.UTC(2027, 3, 20, 18);
});
afterEach(() => {
  vi.restoreAllMocks();
  ports.copies = () => null;
});

async function ring(garden: string): Promise<void> {
  await runDurableObjectAlarm(env.GARDENS.getByName(garden));
  await settled(garden);
}

const alarmOf = (garden: string) =>
  runInDurableObject(env.GARDENS.getByName(garden), (_, { storage }) => storage.getAlarm());

async function keysOf(garden: string): Promise<readonly string[]> {
  return (await bucket.list({ prefix: `${garden}/` })).objects.map(({ key }) => key);
}

async function titlesOf(garden: string): Promise<readonly string[]> {
  const answer = await ask(shell, `${await linkTo(garden, "owner")}tasks.ics`);
  const { events } = readStrictly(new Uint8Array(await answer.arrayBuffer()));
  return events.map(({ uid, summary, start }) => `${uid} ${summary} ${JSON.stringify(start)}`);
}

describe("a garden's copy", () => {
  test("is made by the alarm soon after its first plan, then each night, and is a garden restored", async () => {
    await publish(shell, "nightly", QUARRY);
    await settled("nightly");
    expect(await alarmOf("nightly")).toBeLessThanOrEqual(now);
    await ring("nightly");
    expect(await keysOf("nightly")).toEqual(["nightly/2027-04.zip", "nightly/weekday-2.zip"]);
    expect(await alarmOf("nightly")).toBe(Date.UTC(2027, 3, 21, 6));
    now = Date.UTC(2027, 3, 21, 6);
    await ring("nightly");
    expect(await keysOf("nightly")).toContain("nightly/weekday-3.zip");
    const told = await titlesOf("nightly");
    expect(told.length).toBeGreaterThan(20);

    const copy = await bucket.get("nightly/weekday-3.zip");
    const body = new Uint8Array((await copy?.arrayBuffer()) ?? new ArrayBuffer(0));
    const headers = { "if-none-match": "*" };
    const path = `${await linkTo("nightly-anew", "admin")}archive`;
    expect((await ask(shell, path, { method: "PUT", headers, body })).status).toBe(201);
    expect(await titlesOf("nightly-anew")).toEqual(told);
  });

  test("of one month and of each weekday are kept, whatever comes after", async () => {
    await publish(shell, "kept", QUARRY);
    for (let night = 0; night < 20; night += 1) {
      await ring("kept");
      now = (await alarmOf("kept")) ?? now;
    }
    const months = ["kept/2027-04.zip", "kept/2027-05.zip"];
    const days = [1, 2, 3, 4, 5, 6, 7].map((day) => `kept/weekday-${day}.zip`);
    expect(await keysOf("kept")).toEqual([...months, ...days]);
  });

  test("that fails is logged without a link, keeps nothing from going on, and is tried again within hours", async () => {
    const said = vi.spyOn(console, "error").mockReturnValue();
    await publish(shell, "fails", QUARRY);
    ports.copies = () => ({
      ...bucket,
      put: () => Promise.reject(new Error("the bucket is away")),
    });
    await ring("fails");
    expect(said.mock.calls.map(String).join("\n")).toContain("the bucket is away");
    expect(await inStore("fails", copyRecord)).toMatchObject({ copiedAt: null, failures: 1 });
    expect((await ask(shell, `${await linkTo("fails", "owner")}tasks.ics`)).status).toBe(200);
    expect(await alarmOf("fails")).toBe(now + HOUR);
    ports.copies = () => bucket;
    now += HOUR;
    await ring("fails");
    expect(await keysOf("fails")).toHaveLength(2);
    expect(await inStore("fails", copyRecord)).toMatchObject({ copiedAt: now, failures: 0 });
  });

  test("goes with the garden when that is deleted for good, or the garden stays", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    await publish(shell, "ends", QUARRY);
    await ring("ends");
    const path = `${await linkTo("ends", "owner")}leaving`;
    const headers = { "content-type": "application/x-www-form-urlencoded" };
    const end = () => ask(shell, path, { method: "POST", body: "name=Quarry+Lane", headers });
    ports.copies = () => ({ ...bucket, list: () => Promise.reject(new Error("away")) });
    expect((await end()).status).toBe(503);
    expect((await ask(shell, path)).status).toBe(200);
    ports.copies = () => bucket;
    expect((await end()).status).toBe(200);
    expect(await keysOf("ends")).toEqual([]);
  });

  test("is not made where no bucket is bound", async () => {
    ports.copies = () => null;
    await publish(shell, "none", QUARRY);
    await ring("none");
    expect(await keysOf("none")).toEqual([]);
  });
});
