import { expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { QUARRY } from "../../gardens.ts";
import { ask, linkTo, publish, shellWith } from "./garden.ts";

/** 1 December 2026, in the garden's forenoon: nothing is to be done before the new year. */
const WINTER = Date.UTC(2026, 11, 1, 18);
const shell = shellWith({ engine, now: () => WINTER });

async function home(role: "helper" | "reader", garden = "still", now = WINTER): Promise<string> {
  const link = await linkTo(garden, role, role === "helper" ? "imre" : null);
  return (await ask({ ...shell, now: () => now }, link)).text();
}

test("in winter the page says for how long nothing is due, the next five dates, and what to order", async () => {
  await publish(shell, "still", QUARRY);
  const html = await home("helper");
  expect(html).toMatch(/Then nothing for \d+ days\./);
  const [, next = ""] = /What comes next<\/h2>(.*?)<\/section>/s.exec(html) ?? [];
  expect(next.match(/href="[^"]*\/on\//g)).toHaveLength(5);
  expect(html).toMatch(/To order<\/h2><ul class="ticks">/);
  expect(html).toContain("season.svg");
  expect(html).not.toContain("The next seven days");
});

test("an order is ticked with a tap and unticked with another", async () => {
  await publish(shell, "tick", QUARRY);
  const link = await linkTo("tick", "helper", "imre");
  const ticked = async () =>
    (await home("helper", "tick")).match(/class="tick ticked"/g)?.length ?? 0;
  const [, task = ""] =
    /<ul class="ticks">.*?name="task" value="([^"]*)"/s.exec(await home("helper", "tick")) ?? [];
  expect(task).toMatch(/\/things-to-have\/order$/);
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  for (const [say, count] of [
    ["done", 1],
    ["undo: done", 0],
  ] as const) {
    const body = String(new URLSearchParams({ task, say }));
    expect((await ask(shell, `${link}said`, { method: "POST", body, headers })).status).toBe(303);
    expect(await ticked()).toBe(count);
  }
});

test("a reader is shown what comes next, and nothing to tick or to open", async () => {
  const html = await home("reader");
  expect(html).toContain("What comes next");
  expect(html).not.toMatch(/To order|season\.svg|<button|\/on\//);
});

test("a year that has begun can be looked back on, and the plan's end is said", async () => {
  const html = await home("helper", "still", Date.UTC(2029, 0, 10, 18));
  expect(html).toContain("How 2027 went");
  await home("helper", "still", Date.UTC(2029, 0, 10, 18));
  expect(await home("helper", "still", Date.UTC(2029, 0, 10, 18))).toContain(
    "The plan has no more jobs.",
  );
  expect(await home("helper")).not.toContain("How 2027 went");
});
