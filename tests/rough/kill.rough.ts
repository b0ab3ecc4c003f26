import { Agent } from "node:http";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, test } from "vitest";
import { faultsOf } from "../strict.ts";
import { call, textOf } from "./calls.ts";
import { jobsIn, laneText, linkAt, mustPublish } from "./lane.ts";
import { bundled, freshFolder, type Runtime, startOurs } from "./runtime.ts";

const ROUNDS = 20;
const TAPS = 100;

const folder = freshFolder();
const state = `${folder.path}/state`;
let script: string;
let running: Runtime;

beforeAll(async () => {
  script = bundled(`${folder.path}/bundle`);
  running = await startOurs({ script, state });
});

afterAll(async () => {
  await running?.stop();
  folder.remove();
});

/** What became of a tap: its status, or null where the line went dead before an answer came. */
type Tapped = { readonly task: string; readonly status: number | null };

async function tap(base: string, task: string, lines?: Agent): Promise<Tapped> {
  const body = new URLSearchParams({ task, say: "done" }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  try {
    const answer = await call(`${base}on/${task}`, {
      method: "POST",
      headers,
      body,
      ...(lines && { lines }),
    });
    return { task, status: answer.status };
  } catch {
    return { task, status: null };
  }
}

/** As many lines as taps, all of them open already, so that all taps arrive as one. */
async function openLines(): Promise<Agent> {
  const lines = new Agent({ keepAlive: true, maxSockets: TAPS, maxFreeSockets: TAPS });
  const opened = Array.from({ length: TAPS }, () => call(`${running.origin}/healthz`, { lines }));
  await Promise.all(opened);
  return lines;
}

/** A hundred taps at once; the runtime is killed once so many are answered, and a moment later. */
async function tapAndKill(
  base: string,
  jobs: readonly string[],
  { answered, laterMs }: { readonly answered: number; readonly laterMs: number },
): Promise<readonly Tapped[]> {
  const lines = await openLines();
  let got = 0;
  let killed: Promise<void> | null = null;
  const all = jobs.map(async (job) => {
    const tapped = await tap(base, job, lines);
    got += tapped.status === null ? 0 : 1;
    if (got >= answered)
      killed ??= laterMs === 0 ? running.kill() : wait(laterMs).then(() => running.kill());
    return tapped;
  });
  const done = await Promise.all(all);
  await killed;
  lines.destroy();
  return done;
}

/** How often each job's answer is stored. */
async function storedOf(garden: string): Promise<ReadonlyMap<string, number>> {
  const query = "SELECT task, count(*) AS times FROM diary GROUP BY task";
  const [rows = []] = await running.ask(garden, [query]);
  return new Map(rows.map(({ task, times }) => [String(task), Number(times)]));
}

async function jobsOf(garden: string): Promise<readonly string[]> {
  const feed = await call(`${await linkAt(running, garden, "helper")}tasks.ics`);
  const jobs = [...new Set(jobsIn(textOf(feed)))].slice(0, TAPS);
  expect(jobs).toHaveLength(TAPS);
  return jobs;
}

type Round = {
  readonly answered: number;
  readonly lost: number;
  readonly storedUnanswered: number;
};

async function round(at: number): Promise<Round> {
  const garden = `lane-${at}`;
  await mustPublish(running, garden, laneText(14));
  const jobs = await jobsOf(garden);
  const when = { answered: 2 + 16 * (at % 6), laterMs: at % 2 === 0 ? 0 : (at * 7) % 41 };
  const tapped = await tapAndKill(await linkAt(running, garden, "helper"), jobs, when);
  await running.stop();
  running = await startOurs({ script, state });
  return afterRestart(garden, tapped);
}

async function afterRestart(garden: string, tapped: readonly Tapped[]): Promise<Round> {
  const stored = await storedOf(garden);
  const answered = tapped.filter(({ status }) => status !== null);
  const lost = tapped.filter(({ status }) => status === null);
  for (const { task, status } of answered)
    expect([task, status, stored.get(task)]).toEqual([task, 303, 1]);
  for (const { task } of lost) expect(stored.get(task) ?? 0, task).toBeLessThanOrEqual(1);
  await tapAgain(garden, lost);
  expect(await storedOf(garden)).toEqual(new Map(tapped.map(({ task }) => [task, 1])));
  await expectWholeFeed(garden);
  const storedUnanswered = lost.filter(({ task }) => stored.has(task)).length;
  return { answered: answered.length, lost: lost.length, storedUnanswered };
}

async function tapAgain(garden: string, lost: readonly Tapped[]): Promise<void> {
  const base = await linkAt(running, garden, "helper");
  const again = await Promise.all(lost.map(({ task }) => tap(base, task)));
  for (const { task, status } of again) expect([task, status]).toEqual([task, 303]);
}

async function expectWholeFeed(garden: string): Promise<void> {
  const feed = await call(`${await linkAt(running, garden, "helper")}sessions.ics`);
  expect(feed.status).toBe(200);
  expect(faultsOf(feed.body)).toEqual([]);
}

test("what was answered is stored once, however the runtime is killed, and a second tap makes up the rest", async () => {
  const rounds: Round[] = [];
  for (let at = 0; at < ROUNDS; at += 1) rounds.push(await round(at));
  const sum = (of: (each: Round) => number) => rounds.reduce((all, each) => all + of(each), 0);
  console.log(
    `${ROUNDS} kills amid ${TAPS} taps each: ${sum((r) => r.answered)} answered, ${sum((r) => r.lost)} not, ` +
      `of which ${sum((r) => r.storedUnanswered)} were stored; answered a round: ${rounds.map((r) => r.answered).join(" ")}`,
  );
  expect(rounds.every(({ answered }) => answered > 0)).toBe(true);
  expect(rounds.filter(({ lost }) => lost > 0).length).toBeGreaterThan(ROUNDS / 2);
});
