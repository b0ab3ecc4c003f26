import { describe, expect, test } from "vitest";
import { rebuilderOf } from "../../../src/host/edge/rebuilder.ts";

/** A rebuilder whose builds and pauses end when they are told to, and what it has done. */
function made(results: readonly boolean[] = []) {
  const seen = { begun: 0, most: 0, running: 0 };
  const [ends, pauses]: [(() => void)[], (() => void)[]] = [[], []];
  const build = async () => {
    seen.begun += 1;
    seen.running += 1;
    seen.most = Math.max(seen.most, seen.running);
    const result = results[seen.begun - 1] ?? true;
    await new Promise<void>((done) => ends.push(done));
    seen.running -= 1;
    return result;
  };
  const pause = () => new Promise<void>((done) => pauses.push(done));
  const behind: Promise<unknown>[] = [];
  const rebuilder = rebuilderOf({ build, pause, behind: (work) => behind.push(work) });
  const turn = () => new Promise((done) => setTimeout(done));
  const endBuild = () => {
    ends.shift()?.();
    return turn();
  };
  const endPause = () => {
    pauses.shift()?.();
    return turn();
  };
  return { rebuilder, seen, endBuild, endPause, behind };
}

describe("changes", () => {
  test("begin a build at once after quiet", () => {
    const { rebuilder, seen, behind } = made();
    rebuilder.start();
    expect([seen.begun, behind.length]).toEqual([1, 1]);
  });

  test("that come during a build, or in the pause after it, share one more", async () => {
    const { rebuilder, seen, endBuild, endPause } = made();
    for (let times = 0; times < 5; times += 1) rebuilder.start();
    await endBuild();
    for (let times = 0; times < 5; times += 1) rebuilder.start();
    expect(seen.begun).toBe(1);
    await endPause();
    expect(seen.begun).toBe(2);
    await endBuild();
    await endPause();
    await rebuilder.settled();
    expect(seen).toEqual({ begun: 2, most: 1, running: 0 });
  });

  test("after all is quiet again begin at once", async () => {
    const { rebuilder, seen, endBuild, endPause } = made();
    rebuilder.start();
    await endBuild();
    await endPause();
    rebuilder.start();
    expect(seen.begun).toBe(2);
  });

  test("after a build that failed are built all the same", async () => {
    const { rebuilder, seen, endBuild, endPause } = made([false]);
    rebuilder.start();
    rebuilder.start();
    await endBuild();
    await endPause();
    expect(seen.begun).toBe(2);
  });
});

test("what a request finds owed begins where nothing is on its way, and never asks for one more", async () => {
  const { rebuilder, seen, endBuild, endPause } = made();
  rebuilder.resume();
  rebuilder.resume();
  await endBuild();
  rebuilder.resume();
  await endPause();
  expect(seen.begun).toBe(1);
});

test("whoever waits for a build shares the one on its way, and learns how it went", async () => {
  const { rebuilder, seen, endBuild } = made([false, true]);
  const both = Promise.all([rebuilder.now(), rebuilder.now()]);
  await endBuild();
  expect(await both).toEqual([false, false]);
  const next = rebuilder.now();
  await endBuild();
  expect([await next, seen.begun, seen.most]).toEqual([true, 2, 1]);
});
