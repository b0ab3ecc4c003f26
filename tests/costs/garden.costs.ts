import { runDurableObjectAlarm } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import { engine } from "../../src/host/edge/core.ts";
import type { Role } from "../../src/host/links/segment.ts";
import { ports } from "../host/ports.ts";
import { ask, linkTo, settled, shellWith } from "../host/web/garden.ts";
import { bytesOfLast, countingStore, rowsOf } from "./counting.ts";
import { dayOf, freeGardens, type Measured, monthsPrice } from "./reckoning.ts";

/** The demo garden's plan, handed in by the configuration. */
const { QUARRY } = env as unknown as { readonly QUARRY: string };
const FEEDS = ["helper imre sessions.ics", "helper oda sessions.ics", "reader tasks.ics"] as const;

ports.sqlOf = countingStore;
let now = Date.UTC(2027, 4, 20, 6);
const shell = shellWith({ engine, now: () => now });

async function feedPath(garden: string, named: (typeof FEEDS)[number]): Promise<string> {
  const words = named.split(" ");
  const [role, person, file] = words.length === 3 ? words : [words[0], null, words[1]];
  return `${await linkTo(garden, role as Role, person ?? null)}${file}`;
}

async function save(garden: string, base: number) {
  const headers: Record<string, string> =
    base === 0 ? { "if-none-match": "*" } : { "if-match": `"${base}"` };
  const text = `${QUARRY}# version ${base + 1}\n`;
  const body = JSON.stringify({ text, file: `plans/${garden}/2027.yaml` });
  const path = `${await linkTo(garden, "admin")}plans/2027`;
  expect((await ask(shell, path, { method: "PUT", headers, body })).ok).toBe(true);
}

async function tap(garden: string, task: string, say = "done") {
  const path = `${await linkTo(garden, "helper", "imre")}on/${task}`;
  const body = new URLSearchParams({ task, say }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  expect((await ask(shell, path, { method: "POST", body, headers })).status).toBe(303);
}

/** A garden with its three feeds written, five versions of its plan and sixty answers. */
async function liveIn(garden: string): Promise<void> {
  for (let version = 0; version < 5; version += 1) await save(garden, version);
  for (const feed of FEEDS)
    expect((await ask(shell, await feedPath(garden, feed))).status).toBe(200);
  for (let week = 0; week < 60; week += 1) {
    const task = `2027/garden/water/week-${week % 30}`;
    await tap(garden, task, week < 30 ? "done" : "undo: done").catch(() => undefined);
  }
}

test("what a garden costs, and how many the plans carry", async () => {
  const garden = "lane";
  await liveIn(garden);
  const imres = await feedPath(garden, FEEDS[0]);
  const etag = (await ask(shell, imres)).headers.get("etag") ?? "";
  const polls304 = await rowsOf(async () => {
    const kept = { headers: { "if-none-match": etag } };
    expect((await ask(shell, imres, kept)).status).toBe(304);
  });
  const polls200 = await rowsOf(() => ask(shell, imres));
  const pages = await rowsOf(async () => ask(shell, await linkTo(garden, "helper", "imre")));
  const taps = await rowsOf(() => tap(garden, "2027/carrot/thin/1"));
  const saves = await rowsOf(() => save(garden, 5));
  now += 3 * 86_400_000;
  const turns = await rowsOf(async () => {
    await runDurableObjectAlarm(env.GARDENS.getByName(garden));
    await settled(garden);
  });
  const bytesAGarden = bytesOfLast();
  const measured: Measured = { polls304, polls200, pages, taps, saves, turns, bytesAGarden };
  print(measured);
  expect(polls304.written + polls200.written + pages.written).toBe(0);
  expect(freeGardens(measured).gardens).toBeGreaterThan(700);
});

function print(measured: Measured): void {
  const { bytesAGarden, ...rows } = measured;
  const lines = Object.entries(rows).map(
    ([what, { read, written }]) =>
      `${what.padEnd(12)}${String(read).padStart(8)}${String(written).padStart(8)}`,
  );
  console.log(["", "rows            read written", ...lines].join("\n"));
  console.log(
    `a garden with five versions of its plan, sixty answers, three feeds: ${Math.round(bytesAGarden / 1000)} kB`,
  );
  const { gardens, by } = freeGardens(measured);
  console.log(`the free plan carries ${gardens} gardens: ${by} end it`);
  for (const many of [1, 100, 100_000]) {
    const day = dayOf(many, measured);
    console.log(
      `${many} gardens, a day: ${round(day.requests)} requests, ${round(day.objectRequests)} of objects, ` +
        `${round(day.gigabyteSeconds)} GB-s, ${round(day.rowsRead)} rows read, ${round(day.rowsWritten)} written, ` +
        `${round(day.cpuMs / 1000)} s of CPU; ${round(day.bytes / 1e6)} MB; ` +
        `a month of the paid plan $${monthsPrice(day).toFixed(2)}`,
    );
  }
}

const round = (many: number) => Number(many.toPrecision(3)).toLocaleString("en");
