import { afterEach, expect, test, vi } from "vitest";
import { pauseAfter } from "../../../src/host/edge/building.ts";
import { buildRecord } from "../../../src/host/store/build.ts";
import { feedsBehind } from "../../../src/host/store/feeds.ts";
import { ask, engine, inStore, linkTo, MORNING, PLAN, publish, shellWith } from "../web/garden.ts";

afterEach(() => vi.restoreAllMocks());

const MINUTE = 60_000;

test("pauses after failures double from a minute to six hours", () => {
  const minutes = [0, 1, 2, 3, 7, 8, 9, 100].map((failures) => pauseAfter(failures) / MINUTE);
  expect(minutes).toEqual([1, 2, 4, 8, 128, 256, 360, 360]);
});

test("a build that fails keeps what was, and counts its failures until one goes well", async () => {
  vi.spyOn(console, "error").mockReturnValue();
  const build = () => {
    throw new Error("no such crop");
  };
  let now = MORNING;
  const broken = shellWith({ now: () => now, engine: { ...engine, build } });
  await publish(shellWith(), "brook");
  await publish(broken, "brook", `${PLAN}doubt\n`, 1);
  const state = () => inStore("brook", buildRecord);
  expect(await state()).toMatchObject({ number: 1, failures: 1, retryAt: MORNING + MINUTE });
  now += MINUTE;
  const owner = await linkTo("brook", "owner");
  await ask(broken, owner);
  expect(await state()).toMatchObject({ failures: 2, retryAt: now + 2 * MINUTE });
  await ask(shellWith({ now: () => now + 2 * MINUTE }), owner);
  expect(await state()).toMatchObject({ number: 2, failures: 0, retryAt: 0 });
});

test("a feed that can't be written keeps none from being written, and is tried again after a pause", async () => {
  const shell = shellWith();
  await publish(shell, "third");
  const owner = await linkTo("third", "owner");
  for (const feed of ["quiet/tasks.ics", "tasks.ics"]) await ask(shell, `${owner}${feed}`);
  const said = vi.spyOn(console, "error").mockReturnValue();
  const writeFeed: typeof engine.writeFeed = (writing) => {
    if (writing.choice.quiet) throw new Error("too quiet");
    return engine.writeFeed(writing);
  };
  const tomorrow = MORNING + 86_400_000;
  const broken = { ...shell, now: () => tomorrow, engine: { ...engine, writeFeed } };
  await ask(broken, owner);
  expect(said).toHaveBeenCalledTimes(1);
  const behind = () =>
    inStore("third", (sql) => feedsBehind(sql, buildRecord(sql).number).map(({ feed }) => feed));
  expect(await behind()).toEqual(["quiet/tasks.ics"]);
  await ask({ ...shell, now: () => tomorrow + MINUTE }, owner);
  expect(await behind()).toEqual([]);
});
