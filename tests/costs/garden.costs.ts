import { createExecutionContext, waitOnExecutionContext } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import { buildBaseline, buildSchedule, horizonAt } from "../../src/app/build.ts";
import { readPlanWithDoubts } from "../../src/app/read-plan.ts";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import type { Role } from "../../src/host/links/segment.ts";
import { app } from "../../src/host/web/app.ts";
import type { AppContext } from "../../src/host/web/app-context.ts";
import { renderWaiting } from "../../src/host/web/render.ts";
import { chooseEvents } from "../../src/views/calendar/choose-events.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import { counting, type Rows } from "./counting.ts";
import { FREE } from "./plan.ts";
import { databasesFor, dayOf, freeGardens, type Measured, monthsPrice } from "./reckoning.ts";

/** The demo garden's plan, handed in by the configuration. */
const { QUARRY } = env as unknown as { readonly QUARRY: string };
const SECRET = "a secret for costs, of more than 32 characters";
const ORIGIN = "https://garden.example";
const GARDENS = 12;
const FEEDS = ["helper imre sessions.ics", "helper oda sessions.ics", "reader tasks.ics"] as const;

const store = counting(env.DB);
const key = await keyFrom(SECRET);
const core = {
  readPlan: readPlanWithDoubts,
  horizonAt,
  usualOf: buildBaseline,
  tell: buildSchedule,
  choose: chooseEvents,
  writeCalendar,
};
let now = Date.UTC(2027, 4, 20, 6);

const shell: AppContext = {
  ...{ db: store.db, databases: new Map([[1, store.db]]), key, core, now: () => now },
  ...{ code: "code 1", epoch: "0", origin: null, gardensARun: 3, memory: null },
  limits: { writes: null, unauthorized: null },
};

const linkTo = (garden: string, role: Role, person: string | null = null) =>
  pathOf({ garden, role, person, serial: 1 }, key);

async function feedPath(garden: string, named: (typeof FEEDS)[number]): Promise<string> {
  const words = named.split(" ");
  const [role, person, file] = words.length === 3 ? words : [words[0], null, words[1]];
  return `${await linkTo(garden, role as Role, person ?? null)}${file}`;
}

async function ask(path: string, init: RequestInit = {}): Promise<Response> {
  const context = createExecutionContext();
  const request = new Request(`${ORIGIN}${path}`, { redirect: "manual", ...init });
  const answer = await app.fetch(request, shell, context);
  await waitOnExecutionContext(context);
  return answer;
}

async function rowsOf(work: () => Promise<unknown>): Promise<Rows> {
  const before = store.rows();
  await work();
  const after = store.rows();
  return { read: after.read - before.read, written: after.written - before.written };
}

async function save(garden: string, base: number) {
  const headers: Record<string, string> =
    base === 0 ? { "if-none-match": "*" } : { "if-match": `"${base}"` };
  const text = `${QUARRY}# version ${base + 1}\n`;
  const body = JSON.stringify({ text, file: `plans/${garden}/2027.yaml` });
  const path = `${await linkTo(garden, "admin")}plans/2027`;
  const answer = await ask(path, { method: "PUT", headers, body });
  expect(answer.ok).toBe(true);
}

async function tap(garden: string, task: string, say = "done") {
  const path = `${await linkTo(garden, "helper", "imre")}on/${task}`;
  const body = new URLSearchParams({ task, say }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  expect((await ask(path, { method: "POST", body, headers })).status).toBe(303);
}

/** A garden with its three feeds written, five versions of its plan and sixty answers. */
async function liveIn(garden: string): Promise<void> {
  for (let version = 0; version < 5; version += 1) await save(garden, version);
  for (let week = 0; week < 60; week += 1) await tap(garden, `2027/garden/water/week-${week}`);
  for (const feed of FEEDS) expect((await ask(await feedPath(garden, feed))).status).toBe(200);
  await renderWaiting(shell);
}

test("what a garden costs, and how many the plans carry", async () => {
  await liveIn("lane-0");
  const first = store.bytes();
  for (let at = 1; at < GARDENS; at += 1) await liveIn(`lane-${at}`);
  const bytesAGarden = (store.bytes() - first) / (GARDENS - 1);

  const imres = await feedPath("lane-1", FEEDS[0]);
  const etag = (await ask(imres)).headers.get("etag") ?? "";
  const polls304 = await rowsOf(async () => {
    expect((await ask(imres, { headers: { "if-none-match": etag } })).status).toBe(304);
  });
  const polls200 = await rowsOf(() => ask(imres));
  const pages = await rowsOf(async () => ask(await linkTo("lane-1", "helper", "imre")));
  const taps = await rowsOf(() => tap("lane-1", "2027/carrot/thin/1"));
  const saves = await rowsOf(() => save("lane-1", 5));
  while ((await rowsOf(() => renderWaiting(shell))).written > 0);
  const cron = await rowsOf(() => renderWaiting(shell));
  now += 3 * 86_400_000;
  const renders = await rowsOf(async () => {
    for (const feed of FEEDS) await ask(await feedPath("lane-2", feed));
  });
  const measured: Measured = {
    polls304,
    polls200,
    pages,
    taps,
    saves,
    renders,
    cron,
    bytesAGarden,
  };
  print(measured);
  expect(polls304.written + polls200.written + pages.written + cron.written).toBe(0);
  expect(freeGardens(measured).gardens).toBeGreaterThan(100);
});

function print(measured: Measured): void {
  const { bytesAGarden, ...rows } = measured;
  const lines = Object.entries(rows).map(
    ([what, { read, written }]) =>
      `${what.padEnd(12)}${String(read).padStart(8)}${String(written).padStart(8)}`,
  );
  console.log(["", "rows            read written", ...lines].join("\n"));
  console.log(
    `a garden with five versions of its plan, sixty answers, three feeds: ${kb(bytesAGarden)} kB`,
  );
  const { gardens, by } = freeGardens(measured);
  const room = Math.floor(FREE.bytesADatabase / bytesAGarden);
  console.log(
    `the free plan carries ${gardens} gardens: ${by} end it; one database of it holds ${room}`,
  );
  for (const many of [1, 100, 100_000]) {
    const day = dayOf(many, measured);
    console.log(
      `${many} gardens, a day: ${round(day.requests)} requests, ${round(day.rowsRead)} rows read, ${round(day.rowsWritten)} written, ` +
        `${round(day.cpuMs / 1000)} s of CPU; ${round(day.bytes / 1e6)} MB, ${databasesFor(day)} databases of 10 GB; ` +
        `a month of the paid plan $${monthsPrice(day).toFixed(2)}`,
    );
  }
}

const kb = (bytes: number) => Math.round(bytes / 1000);
const round = (many: number) => Number(many.toPrecision(3)).toLocaleString("en");
