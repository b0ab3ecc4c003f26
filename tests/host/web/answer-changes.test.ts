import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import { engine } from "../../../src/host/edge/core.ts";
import { QUARRY } from "../../gardens.ts";
import { ask, linkTo, publish, type Shell, settled, shellWith } from "./garden.ts";

const CARROTS_OUT = "2027/carrot/sow-outdoors/1";
const BEETS_THINNED = "2027/beet/thin/1";

/** The garden as of an hour into a day of 2027. */
function on(month: number, day: number, hours = 1): Shell {
  const instant = startOf(dayOrThrow(2027, month, day), "America/Denver") + hours * 3_600_000;
  return shellWith({ engine, now: () => instant });
}

async function made(garden: string, shell: Shell): Promise<string> {
  expect((await publish(shell, garden, QUARRY)).status).toBe(201);
  return linkTo(garden, "helper", "imre");
}

const tap = (shell: Shell, base: string, task: string, say: string) =>
  ask(shell, `${base}on/${task}`, {
    method: "POST",
    body: new URLSearchParams({ task, say }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const pageOf = async (shell: Shell, base: string, task: string) =>
  (await ask(shell, `${base}on/${task}`)).text();

/** The lines of what moved on a page; null where it says nothing of it. */
const movedOn = (html: string) => {
  const list = /moved with it<\/summary><ul>([\s\S]*?)<\/ul>/.exec(html)?.[1];
  if (list !== undefined)
    return [...list.matchAll(/<li>(.*?)<\/li>/g)].map((found) => found[1] ?? "");
  return html.includes("Nothing else moves.") ? [] : null;
};

test("an answer that moves later days tells which, and from when", async () => {
  const late = on(6, 1);
  const base = await made("late", late);
  expect((await tap(late, base, CARROTS_OUT, "done")).status).toBe(303);
  const moved = movedOn(await pageOf(late, base, CARROTS_OUT)) ?? [];
  expect(moved.length).toBeGreaterThan(1);
  expect(moved.length).toBeLessThanOrEqual(9);
  expect(moved.join("\n")).toMatch(/^Thin carrots.*later\)$/m);
  expect(moved.join("\n")).not.toMatch(/^Sow carrots/m);

  const nextEvening = on(6, 2, 12);
  expect(movedOn(await pageOf(nextEvening, base, CARROTS_OUT))).toEqual(moved);
  expect(movedOn(await pageOf(on(6, 2, 14), base, CARROTS_OUT))).toBeNull();
});

test("one that moves nothing says so, and where nobody answered nothing is said", async () => {
  const shell = on(6, 5);
  const base = await made("still", shell);
  await tap(shell, base, BEETS_THINNED, "done");
  expect(movedOn(await pageOf(shell, base, BEETS_THINNED))).toEqual([]);
  expect(movedOn(await pageOf(shell, base, "2027/potato/plant/1"))).toBeNull();
});

test("the newest answer counts", async () => {
  const shell = on(6, 1);
  const base = await made("undone", shell);
  await tap(shell, base, CARROTS_OUT, "done");
  await tap(shell, base, CARROTS_OUT, "undo: done");
  expect(movedOn(await pageOf(shell, base, CARROTS_OUT))?.join("\n")).toMatch(/sooner\)/);
});

test("until the build that knows the answer is done, its page says that it is still to come", async () => {
  const shell = on(6, 1);
  const base = await made("soon", shell);
  const broken = { ...shell, engine: { ...engine, build: () => expect.fail("not now") } };
  await tap(broken, base, CARROTS_OUT, "done");
  await settled("soon");
  const html = await pageOf(broken, base, CARROTS_OUT);
  expect(html).toContain("Done 1 June, Imre.");
  expect(html).toContain("in a moment");
});
