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

async function begin(): Promise<void> {
  running = await startOurs({ script, state });
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

/** Cuts a column of every row, or of those where something holds, to so many letters or bytes. */
async function cut(table: string, column: string, to: number, where = "true"): Promise<void> {
  const query = `UPDATE ${table} SET ${column} = substr(${column}, 1, ${to}) WHERE ${where}`;
  await running.ask(GARDEN, [query]);
}

const cutBodies = (to: number) => cut("pieces", "bytes", to, "name GLOB 'body/*'");

/** Makes every feed stale, as a plan or a line of the diary does, and lets it be built at once. */
const stale = () =>
  running.ask(
    GARDEN,
    ["UPDATE garden SET revision = revision + 1"],
    ["UPDATE build SET retry_at = 0"],
  );

/** Waits until what is stored is built from all that is known. */
async function built(): Promise<void> {
  const query = "SELECT g.revision = b.revision AS done FROM garden AS g, build AS b";
  for (let times = 0; times < 200; times += 1) {
    const [rows = []] = await running.ask(GARDEN, [query]);
    if (rows[0]?.done === 1) return;
    await poll({ url: `${base}tasks.ics`, gzip: true, held: {} });
    await wait(50);
  }
  throw new Error("it was not built");
}

test("all is well at first", async () => {
  expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
});

test.each([0, 1, 17, 99, 1000, 1003])(
  "bodies cut to %i bytes are written anew before anybody gets them",
  async (to) => {
    await cutBodies(to);
    expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
    const query = "SELECT min(length(bytes)) AS least FROM pieces WHERE name GLOB 'body/*'";
    const [rows = []] = await running.ask(GARDEN, [query]);
    expect(rows[0]?.least).toBeGreaterThan(500);
  },
);

test.each([
  ["tasks", "published"],
  ["tasks", "card"],
  ["ledger", "text"],
] as const)("%s.%s cut short is built anew", async (table, column) => {
  for (const to of [1, 57]) {
    await cut(table, column, to);
    await cutBodies(77);
    await stale();
    expect(await pollAll(FEEDS, { stored: false })).toEqual(new Set([200, 304]));
    await built();
    expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
  }
});

test("a reading of the plan cut short is read anew from the plan's text", async () => {
  await cut("pieces", "bytes", 100, "name GLOB 'reading/*'");
  await stale();
  expect(await pollAll(FEEDS, { stored: true })).toEqual(new Set([200, 304]));
  await built();
});

test("a build that throws leaves what is stored, and from that what was never asked for is written", async () => {
  await running.ask(GARDEN, ["UPDATE plans SET text = 'garden: ['"]);
  await cut("pieces", "bytes", 100, "name GLOB 'reading/*'");
  expect(await pollAll(FEEDS, { stored: true, times: 2 })).toEqual(new Set([200, 304]));
  expect(await pollAll(NEVER_ASKED, { stored: true })).toEqual(new Set([200, 304]));
});

test("a body cut short that can't be written anew is nobody's answer", async () => {
  await cutBodies(500);
  await cut("events", "json", 9);
  expect(await pollAll(FEEDS, { stored: false })).toEqual(new Set([304, 503]));
});

test("a plan published again brings every calendar back", async () => {
  const { status } = await publish(running, GARDEN, { text: laneText(3), base: 1 });
  expect(status).toBe(200);
  await built();
  await pollAll([...FEEDS, ...NEVER_ASKED], { stored: false });
  expect(await pollAll([...FEEDS, ...NEVER_ASKED], { stored: true })).toEqual(new Set([200, 304]));
});

function storeFiles(): readonly string[] {
  const all = readdirSync(state, { recursive: true }) as string[];
  return all.filter((name) => /\.sqlite(-wal|-shm)?$/.test(name)).map((name) => join(state, name));
}

test("with the store's file gone no calendar gets anything wrong; after a restart the garden is not there", async () => {
  expect(storeFiles().length).toBeGreaterThan(0);
  for (const file of storeFiles()) rmSync(file);
  await pollAll(FEEDS, { stored: false, times: 2 });
  await running.stop();
  await begin();
  expect(await pollAll(FEEDS, { stored: false, times: 2 })).toEqual(new Set([404]));
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
