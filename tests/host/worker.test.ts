import { runDurableObjectAlarm, runInDurableObject } from "cloudflare:test";
import { env, exports } from "cloudflare:workers";
import { expect, test, vi } from "vitest";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import type { Role } from "../../src/host/links/segment.ts";
import worker from "../../src/host/worker.ts";
import { faultsOf } from "../strict.ts";
import { inStore, settled } from "./web/garden.ts";

const SECRET = "a secret for tests, of more than 32 characters";

const PLAN = `garden: Quarry Lane
year: 2027
place: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }
people: { Imre: { gardens: Sat 9-12 } }
crops:
  - carrot
  - tomato: 6 plants
`;

async function addressOf(role: "admin" | "owner", rest: string): Promise<string> {
  const key = await keyFrom(SECRET);
  const path = await pathOf({ garden: "quarry-lane", role, person: null, serial: 1 }, key);
  return `https://garden.example${path}${rest}`;
}

async function publish(text: string): Promise<Response> {
  const body = JSON.stringify({ text, file: "plans/quarry-lane/2027.yaml" });
  const headers = { "if-none-match": "*" };
  const init = { method: "PUT", body, headers };
  return exports.default.fetch(await addressOf("admin", "plans/2027"), init);
}

/** Publishes a garden's first plan, and gives the addresses of its links. */
async function publishedAs(garden: string, text: string) {
  const key = await keyFrom(SECRET);
  const at = async (role: Role, person: string | null) =>
    `https://garden.example${await pathOf({ garden, role, person, serial: 1 }, key)}`;
  const body = JSON.stringify({ text, file: `plans/${garden}/2027.yaml` });
  const put = { method: "PUT", body, headers: { "if-none-match": "*" } };
  const made = await exports.default.fetch(`${await at("admin", null)}plans/2027`, put);
  expect(made.status).toBe(201);
  return at;
}

/** Sends an answer to a task from a page, as its button does. */
function tapOn(page: string, task: string, say: string): Promise<Response> {
  return exports.default.fetch(page, {
    method: "POST",
    redirect: "manual",
    body: new URLSearchParams({ task, say }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });
}

test("the worker is well", async () => {
  const answer = await exports.default.fetch("https://garden.example/healthz");
  expect(await answer.text()).toBe("ok\n");
});

test("a plan with problems is refused by line, in the words of the plan's own reader", async () => {
  const answer = await publish("garden: Quarry Lane\nyear: 2027\nbedz: {}\n");
  expect(answer.status).toBe(422);
  const { problems } = (await answer.json()) as { problems: readonly string[] };
  expect(problems.length).toBeGreaterThan(0);
  for (const line of problems) expect(line).toMatch(/^plans\/quarry-lane\/2027\.yaml:\d+:\d+: /);
});

test("a plan in, a calendar out, the same bytes to every poll", async () => {
  expect((await publish(PLAN)).status).toBe(201);
  const feed = await addressOf("owner", "tasks.ics");
  const first = await exports.default.fetch(feed);
  const text = await first.text();
  expect(first.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
  expect(text).toMatch(/SUMMARY:.*tomatoes/);
  const second = await exports.default.fetch(feed);
  expect(await second.text()).toBe(text);
  expect(second.headers.get("etag")).toBe(first.headers.get("etag"));
});

test("the alarm builds what new code or the turn of the day has made stale", async () => {
  await settled("quarry-lane");
  await inStore("quarry-lane", (sql) =>
    sql.rows("UPDATE build SET code = 'an older one', until = 0"),
  );
  expect(await runDurableObjectAlarm(env.GARDENS.getByName("quarry-lane"))).toBe(true);
  const rows = await inStore("quarry-lane", (sql) =>
    sql.rows<{ code: string; until: number }>("SELECT code, until FROM feeds"),
  );
  expect(rows).toHaveLength(1);
  expect(rows[0]).not.toMatchObject({ code: "an older one" });
  const alarm = await runInDurableObject(env.GARDENS.getByName("quarry-lane"), (_, { storage }) =>
    storage.getAlarm(),
  );
  expect(alarm).toBe(rows[0]?.until);
});

test("without a secret nothing is answered, rather than links that anybody could make", async () => {
  const { SECRET, ...bindings } = env;
  expect(SECRET).toBeDefined();
  const said = vi.spyOn(console, "error").mockReturnValue();
  const request = new Request("https://garden.example/");
  const answer = await worker.fetch(request, { ...bindings, SECRET: "" });
  expect(answer.status).toBe(503);
  expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  said.mockRestore();
});

const LANE = `garden: Lane
year: 2027
place: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }
people:
  Quillon: { gardens: Wed 18-19, home: weekdays from 17:30 }
  Zebedea: { gardens: Sun 10-12, home: every day but Tue }
away:
  - Zebedea, 19 to 23 Jun
beds:
  Top bed: { is: 12 x 4 ft, crops: ["carrot: 3 rows, under a board", "tomato: 6 plants", "beet: 2 rows"] }
`;

const FEEDS = {
  owner: ["sessions.ics", "tasks.ics", "household.ics", "bed/top-bed.ics", "warnings.ics"],
  helper: ["sessions.ics", "tasks.ics", "bed/top-bed.ics", "quiet/sessions.ics"],
  reader: ["tasks.ics", "bed/top-bed.ics", "warnings.ics", "quiet/tasks.ics"],
} as const;

test("every feed of every link is without a fault, and a reader's tells of nobody", async () => {
  const garden = "lane";
  const at = await publishedAs(garden, LANE);
  for (const role of ["owner", "helper", "reader"] as const) {
    const base = await at(role, role === "helper" ? "quillon" : null);
    for (const feed of FEEDS[role]) {
      const answer = await exports.default.fetch(`${base}${feed}`);
      const bytes = new Uint8Array(await answer.arrayBuffer());
      expect(answer.status, `${role} ${feed}`).toBe(200);
      expect(faultsOf(bytes), `${role} ${feed}`).toEqual([]);
      if (!feed.includes("warnings"))
        expect(new TextDecoder().decode(bytes)).toMatch(/SUMMARY:(?!Nothing due)/);
      const text = new TextDecoder().decode(bytes).replaceAll("\r\n ", "");
      if (role === "reader")
        expect(text).not.toMatch(/quillon|zebedea|helper-|owner-|T\d{6}Z\r\nDTEND/i);
    }
  }
});

test("one tap on a job's page moves the chain behind it, and another takes it back", async () => {
  const garden = "tap-lane";
  const at = await publishedAs(garden, LANE);
  const base = await at("helper", "quillon");
  const page = `${base}on/2027/beet/sow-outdoors/1`;
  const tap = (say: string) => tapOn(page, "2027/beet/sow-outdoors/1", say);
  const textOf = async (address: string) => (await exports.default.fetch(address)).text();
  const feed = async () => (await textOf(`${base}tasks.ics`)).replaceAll("\r\n ", "");

  expect(await textOf(page)).toContain(">Sown today<");
  const before = await feed();
  expect((await tap("done")).status).toBe(303);
  const after = await textOf(page);
  expect(after).toMatch(/Done \d+ \w+, Quillon\./);
  expect(after).toContain(">Undo<");
  await settled(garden);
  expect(await feed()).not.toBe(before);
  expect(await feed()).toMatch(/Done \d+ \w+\\, Quillon/);
  expect((await tap("undo: done")).status).toBe(303);
  expect(await textOf(page)).toContain(">Sown today<");

  const thin = `${base}on/2027/carrot/thin/1`;
  const leave = (say: string) => tapOn(thin, "2027/carrot/thin/1", say);
  await leave("left this year");
  expect(await textOf(thin)).toContain("Left this year,");
  await leave("undo: left this year");
  expect(await textOf(thin)).toContain(">Leave it this year<");
});

test("a visit of one job answered leads back to that job, whether or not a calendar was ever asked for", async () => {
  const garden = "one-lane";
  const text = `garden: One
year: 2027
place: { clock: America/Boise, last frost: about 6 May, first frost: about 2 Oct }
people: { Ann: { gardens: Sat 9-12 } }
crops: [{ crop: beet, sow: 8 May, without: [thinning, weeding, things to have] }]
`;
  const at = await publishedAs(garden, text);
  const page = `${await at("helper", "ann")}on/ann/2027-05-08`;
  const textOf = async () => (await exports.default.fetch(page)).text();
  const task = "2027/beet/sow-outdoors/1";
  expect(await textOf()).toContain(`value="${task}"`);
  const done = await tapOn(page, task, "done");
  expect(done.status).toBe(303);
  const after = await exports.default.fetch(page);
  expect(after.status).toBe(200);
  expect(await after.text()).toMatch(/Done \d+ \w+, Ann\.[\s\S]*>Undo</);
});

test("frost tonight, the pictures and the month on paper are the household's", async () => {
  const garden = "look-lane";
  const at = await publishedAs(garden, LANE);
  const helper = await at("helper", "quillon");
  const get = (rest: string, base = helper) => exports.default.fetch(`${base}${rest}`);

  expect(await (await get("frost")).text()).toContain("low by the forecast, °F");
  const night = await get("frost?low=28");
  expect([night.status, (await night.text()).includes("28 °F by the forecast")]).toEqual([
    200,
    true,
  ]);
  expect((await get("frost?low=cold")).status).toBe(400);
  for (const drawing of ["beds.svg", "season.svg", "frost.svg", "soil.svg"]) {
    const answer = await get(drawing);
    expect(answer.headers.get("content-type")).toBe("image/svg+xml; charset=utf-8");
    expect(await answer.text()).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
  }
  const sheet = await get("sheet/2027-06");
  expect([sheet.status, await sheet.text()]).toEqual([200, expect.stringContaining("June 2027")]);
  expect((await get("sheet/2027-13")).status).toBe(404);
  const reader = await at("reader", null);
  for (const rest of ["frost", "pictures", "beds.svg", "season.svg", "sheet"])
    expect((await get(rest, reader)).status, rest).toBe(404);
});
