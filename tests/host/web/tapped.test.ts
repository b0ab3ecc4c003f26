import { beforeAll, describe, expect, test } from "vitest";

import { ask, inStore, linkTo, MORNING, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let page: string;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "tapped");
  page = `${await linkTo("tapped", "helper", "imre")}on/2027/thin-beets/do/1`;
});

const form = (task: string, say: string, headers: Record<string, string> = {}): RequestInit => ({
  method: "POST",
  body: new URLSearchParams({ task, say }).toString(),
  headers: { "content-type": "application/x-www-form-urlencoded", ...headers },
});

async function rows(garden = "tapped") {
  const query = "SELECT day, text, task, person FROM diary ORDER BY id";
  return inStore(garden, (sql) => sql.rows<{ readonly text: string }>(query));
}

const DONE = form("2027/thin-beets/do/1", "done");

describe("a tap", () => {
  test("is written down once, by whom and for which job, and leads back to its page", async () => {
    const answer = await ask(shell, page, DONE);
    expect(answer.status).toBe(303);
    expect(answer.headers.get("location")).toBe(`${page}#job-2027-thin-beets-do-1`);
    const row = { day: "2027-05-07", text: "done", task: "2027/thin-beets/do/1", person: "imre" };
    expect(await rows()).toEqual([row]);
    await Promise.all([ask(shell, page, DONE), ask(shell, page, DONE)]);
    expect(await rows()).toEqual([row]);
  });

  test("that it is not yet time counts again on another day, and once on each", async () => {
    const later = (days: number) => ({ ...shell, now: () => MORNING + days * 86_400_000 });
    const path = `${await linkTo("tapped", "helper", "oda")}on/2027/hill-potatoes/do/1`;
    const notYet = form("2027/hill-potatoes/do/1", "not yet");
    for (const days of [0, 0, 3, 3])
      expect((await ask(later(days), path, notYet)).status).toBe(303);
    const found = (await rows()).filter(({ text }) => text === "not yet");
    expect(found.map((row) => (row as unknown as { day: string }).day)).toEqual([
      "2027-05-07",
      "2027-05-10",
    ]);
  });

  test("is undone by another, and done again by a third", async () => {
    await ask(shell, page, form("2027/thin-beets/do/1", "undo: done"));
    await ask(shell, page, DONE);
    const answers = (await rows()).map(({ text }) => text).filter((text) => text !== "not yet");
    expect(answers).toEqual(["done", "undo: done", "done"]);
  });

  test("on the garden's own page leads back to the job's place there", async () => {
    const link = await linkTo("tapped", "helper", "imre");
    const answer = await ask(shell, `${link}said`, form("2027/thin-beets/do/1", "not yet"));
    expect(answer.status).toBe(303);
    expect(answer.headers.get("location")).toBe(`${link}#job-2027-thin-beets-do-1`);
    expect((await ask(shell, `${link}said`)).status).toBe(405);
  });

  test("answers several jobs that are one on the page, all or none", async () => {
    const link = await linkTo("tapped", "helper", "imre");
    const both = (second: string) => ({
      ...form("2027/cover-squash/do/1", "done"),
      body: `task=2027/cover-squash/do/1&task=${second}&say=done`,
    });
    const before = (await rows()).length;
    expect((await ask(shell, `${link}said`, both("2027/nope/thin/1"))).status).toBe(400);
    expect(await rows()).toHaveLength(before);
    expect((await ask(shell, `${link}said`, both("2027/hill-potatoes/do/1"))).status).toBe(303);
    expect(await rows()).toHaveLength(before + 2);
    await ask(shell, `${link}said`, both("2027/hill-potatoes/do/1"));
    expect(await rows()).toHaveLength(before + 2);
  });

  test("changes nothing where the page is only looked at", async () => {
    const before = await rows();
    await ask(shell, page);
    await ask(shell, page, { method: "HEAD" });
    expect(await rows()).toEqual(before);
  });
});

describe("nothing is written", () => {
  test.each([
    [
      "from another site",
      form("2027/thin-beets/do/1", "left this year", { "sec-fetch-site": "cross-site" }),
      403,
    ],
    [
      "from another origin",
      form("2027/thin-beets/do/1", "left this year", { origin: "https://evil.example" }),
      403,
    ],
    ["to a job the garden has not", form("2027/nope/thin/1", "done"), 400],
    ["that is no answer", form("2027/thin-beets/do/1", "<script>"), 400],
    ["that is too long", form("x".repeat(5000), "done"), 400],
    [
      "of another type",
      { method: "POST", body: "{}", headers: { "content-type": "application/json" } },
      400,
    ],
    ["by a wrong method", { method: "PUT", body: "" }, 405],
  ] as const)("%s", async (_, init, status) => {
    const was = await rows();
    expect((await ask(shell, page, init)).status).toBe(status);
    expect(await rows()).toEqual(was);
  });

  test("by a reader, over a revoked link, or for a garden that is gone", async () => {
    const was = await rows();
    const reader = `${await linkTo("tapped", "reader")}on/2027/thin-beets/do/1`;
    expect((await ask(shell, reader, DONE)).status).toBe(404);
    expect((await ask(shell, `${await linkTo("tapped", "reader")}said`, DONE)).status).toBe(404);
    const gone = `${await linkTo("nowhere", "helper", "imre")}on/2027/thin-beets/do/1`;
    expect((await ask(shell, gone, DONE)).status).toBe(404);
    const owner = await linkTo("tapped", "owner");
    await ask(shell, `${owner}links/helper-imre-1`, { method: "DELETE" });
    expect((await ask(shell, page, form("2027/thin-beets/do/1", "not yet"))).status).toBe(404);
    expect(await rows()).toEqual(was);
  });
});
