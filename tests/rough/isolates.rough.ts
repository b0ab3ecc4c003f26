import { afterAll, beforeAll, expect, test } from "vitest";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import { faultsOf } from "../strict.ts";
import { call } from "./calls.ts";
import { laneText, linkAt, mustPublish } from "./lane.ts";
import { bundled, freshFolder, type Runtime, SECRET, startOurs } from "./runtime.ts";

const GARDEN = "lane";
const TAPS = 1000;
const AT_ONCE = 200;

const folder = freshFolder();
let running: Runtime;

beforeAll(async () => {
  const script = bundled(`${folder.path}/bundle`);
  running = await startOurs({ script, state: `${folder.path}/state` });
  await mustPublish(running, GARDEN, laneText(20));
  await feed();
});

afterAll(async () => {
  await running?.stop();
  folder.remove();
});

/** As many people as tap, since one alone may not write so often in a minute. */
const PEOPLE = 8;

/** A helper's link at one isolate or the other. */
async function linkOf(isolate: string, person: number): Promise<string> {
  const link = { garden: GARDEN, role: "helper", person: `p${person}`, serial: 1 } as const;
  return `${isolate}${await pathOf(link, await keyFrom(SECRET))}`;
}

/** One tap, over a line of its own. */
async function tap(base: string, task: string): Promise<number> {
  const body = new URLSearchParams({ task, say: "done" }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  return (await call(`${base}on/${task}`, { method: "POST", headers, body })).status;
}

/** So many at a time: the runtime hangs up on a line that waits a quarter of a minute to be read. */
async function inTurns(taps: readonly (() => Promise<number>)[]): Promise<readonly number[]> {
  const [statuses, left]: [number[], (() => Promise<number>)[]] = [[], [...taps]];
  const turns = async () => {
    for (let next = left.shift(); next; next = left.shift()) statuses.push(await next());
  };
  await Promise.all(Array.from({ length: AT_ONCE }, turns));
  return statuses;
}

async function feed(): Promise<string> {
  const { status, body } = await call(
    `${await linkAt({ origin: running.second }, GARDEN, "helper")}tasks.ics`,
  );
  expect([status, faultsOf(body)]).toEqual([200, []]);
  return new TextDecoder().decode(body).replaceAll("\r\n ", "");
}

/** Waits until the year is built with every line of the diary. */
async function built(): Promise<number> {
  const query =
    "SELECT number, line = (SELECT max(id) FROM diary) AS done FROM build, garden WHERE garden.revision = build.revision";
  for (;;) {
    const [rows = []] = await running.ask(GARDEN, [query]);
    if (rows[0]?.done === 1) return Number(rows[0].number);
    await new Promise((done) => setTimeout(done, 100));
  }
}

test("a thousand taps at once from two isolates are each answered, each stored once, and the feeds are right", async () => {
  const [tasks = []] = await running.ask(GARDEN, [
    "SELECT id FROM tasks WHERE event IS NOT NULL ORDER BY id LIMIT ?1",
    TAPS / 2,
  ]);
  const jobs = tasks.map(({ id }) => String(id));
  expect(jobs).toHaveLength(TAPS / 2);
  const links = await Promise.all(
    Array.from({ length: PEOPLE }, async (_, person) => [
      await linkOf(running.origin, person),
      await linkOf(running.second, person),
    ]),
  );
  // Every job is tapped over both isolates at once, and one of the two taps must count.
  const taps = jobs.flatMap((job, at) =>
    (links[at % PEOPLE] ?? []).map((link) => () => tap(link, job)),
  );
  const statuses = await inTurns(taps);
  expect(statuses).toHaveLength(TAPS);
  expect(statuses.filter((status) => status !== 303)).toEqual([]);
  const [rows = []] = await running.ask(GARDEN, [
    "SELECT task, count(*) AS times FROM diary GROUP BY task",
  ]);
  expect(new Map(rows.map(({ task, times }) => [task, times]))).toEqual(
    new Map(jobs.map((job) => [job, 1])),
  );
  const builds = await built();
  const done = (await feed()).match(/^DESCRIPTION:.*Done \d/gm) ?? [];
  expect(done.length).toBeGreaterThan(20);
  console.log(
    `${TAPS} taps over two isolates: ${rows.length} stored, ${builds} builds in all, ${done.length} events done`,
  );
});
