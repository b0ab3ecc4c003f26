import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Answer } from "./calls.ts";
import { laneText, linkAt, mustPublish, publish } from "./lane.ts";
import { type Poll, poll, wrongIn } from "./polls.ts";
import { bundled, freshFolder, type Runtime, startOurs } from "./runtime.ts";

const GARDEN = "lane";
const FEEDS = ["sessions", "tasks", "household", "warnings", "bed/bed-1", "quiet/tasks"];
const NEVER_ASKED = ["quiet/sessions", "quiet/warnings", "bed/bed-2"];
const AT_ONCE = 12;

const folder = freshFolder();
const state = `${folder.path}/state`;
let script: string;
let running: Runtime;
let base: string;
const asked: number[] = [];

async function begin(how: { readonly migrated?: boolean } = {}): Promise<void> {
  running = await startOurs({ script, state }, how);
  base = await linkAt(running, GARDEN, "helper");
}

beforeAll(async () => {
  script = bundled(`${folder.path}/bundle`);
  await begin();
  await mustPublish(running, GARDEN, laneText(3));
  await pollAll(FEEDS, { stored: false });
});

afterAll(async () => {
  await running?.stop();
  folder.remove();
});

/** Everything that a client may hold of a feed: nothing, the very bytes, others, only a date. */
async function heldOf(feed: string): Promise<readonly Poll["held"][]> {
  const { headers } = await poll({ url: `${base}${feed}.ics`, gzip: true, held: {} });
  const old = "Fri, 07 May 2021 06:00:00 GMT";
  return [
    {},
    { "if-none-match": headers.etag ?? '"old"' },
    { "if-none-match": '"old"', "if-modified-since": old },
    { "if-modified-since": headers["last-modified"] ?? old },
  ];
}

/** So many polls of every feed, by every kind of client, some at once; none may be answered wrongly. Gives their statuses. */
async function pollAll(
  feeds: readonly string[],
  { stored, times = 1 }: { readonly stored: boolean; readonly times?: number },
): Promise<ReadonlySet<number>> {
  const polls: Poll[] = [];
  for (const feed of Array.from({ length: times }, () => feeds).flat())
    for (const held of await heldOf(feed))
      for (const gzip of [true, false]) polls.push({ url: `${base}${feed}.ics`, gzip, held });
  const statuses: number[] = [];
  for (let from = 0; from < polls.length; from += AT_ONCE) {
    const some = polls.slice(from, from + AT_ONCE);
    const answers = await Promise.all(some.map(poll));
    statuses.push(...some.map((one, i) => statusOf(one, answers[i], stored)));
  }
  asked.push(...statuses);
  return new Set(statuses);
}

function statusOf(asked: Poll, answer: Answer | undefined, stored: boolean): number {
  if (answer === undefined) throw new Error("not answered");
  const path = asked.url.slice(base.length);
  expect(wrongIn(asked, answer, stored), `${path} ${JSON.stringify(asked)}`).toEqual([]);
  return answer.status;
}

/** What polls found before is good for a second more; afterwards each sees the store as it is now. */
const FORGOTTEN_MS = 1100;

async function cut(table: string, column: string, to: number): Promise<void> {
  await running.ask([`UPDATE ${table} SET ${column} = substr(${column}, 1, ${to})`]);
  await wait(FORGOTTEN_MS);
}

/** Makes every feed stale, as a plan or a line of the diary does. */
const stale = () => running.ask(["UPDATE gardens SET revision = revision + 1"]);

test("all is well at first", async () => {
  expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
});

test.each([0, 1, 99, 100, 1000, 1003])(
  "bodies cut to %i letters are written anew before anybody gets them",
  async (to) => {
    await cut("feeds", "body", to);
    expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
    const [rows = []] = await running.ask(["SELECT min(length(body)) AS least FROM feeds"]);
    expect(rows[0]?.least).toBeGreaterThan(1003);
  },
);

test.each([
  ["feeds", "ledger"],
  ["gardens", "events"],
  ["gardens", "usual"],
  ["gardens", "standing"],
] as const)("%s.%s cut short is reckoned anew", async (table, column) => {
  for (const to of [1, 57]) {
    await stale();
    await cut(table, column, to);
    await cut("feeds", "body", 77);
    expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
    const least = `SELECT min(length(${column})) AS least FROM ${table}`;
    const [rows = []] = await running.ask([least]);
    expect(rows[0]?.least).toBeGreaterThan(57);
  }
});

test("a render that throws leaves what is stored, and who holds a copy of what is not keeps it", async () => {
  await cut("plans", "plan", 1000);
  expect(await pollAll(FEEDS, { stored: true, times: 2 })).toEqual(new Set([200, 304]));
  expect(await pollAll(NEVER_ASKED, { stored: false })).toEqual(new Set([304, 503]));
  const { status } = await publish(running, GARDEN, { text: laneText(3), base: 1 });
  expect(status).toBe(200);
  await pollAll(NEVER_ASKED, { stored: false });
  expect(await pollAll(NEVER_ASKED, { stored: true })).toEqual(new Set([200, 304]));
});

test("a body cut short that can't be written anew is nobody's answer", async () => {
  await cut("plans", "plan", 1000);
  await cut("feeds", "body", 500);
  expect(await pollAll(FEEDS, { stored: false })).toEqual(new Set([304, 503]));
});

function storeFiles(): readonly string[] {
  const all = readdirSync(state, { recursive: true }) as string[];
  return all.filter((name) => /\.sqlite(-wal|-shm)?$/.test(name)).map((name) => join(state, name));
}

test("with the store's file gone a calendar keeps what it has, then and after a restart", async () => {
  expect(storeFiles().length).toBeGreaterThan(0);
  for (const file of storeFiles()) rmSync(file);
  await pollAll(FEEDS, { stored: false, times: 2 });
  await running.stop();
  await begin({ migrated: false });
  expect(await pollAll(FEEDS, { stored: false, times: 2 })).toEqual(new Set([304, 503]));
});

test("a store made anew and its plan published again bring every calendar back", async () => {
  await running.stop();
  await begin();
  await mustPublish(running, GARDEN, laneText(3));
  const all = [...FEEDS, ...NEVER_ASKED];
  await pollAll(all, { stored: false });
  expect(await pollAll(all, { stored: true })).toEqual(new Set([200, 304]));
});

test("a thousand polls were asked in all", () => {
  const times = (status: number) => asked.filter((one) => one === status).length;
  console.log(
    `${asked.length} polls: ${[200, 304, 404, 503].map((status) => `${times(status)} of ${status}`).join(", ")}`,
  );
  expect(asked.length).toBeGreaterThanOrEqual(1000);
});
