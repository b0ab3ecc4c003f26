import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { buildRecord } from "../../../src/host/store/build.ts";
import { gardenText } from "../../bench/garden.ts";
import { ask, inStore, linkTo, put, shellWith } from "../web/garden.ts";

/** Bytes that no stored value may have. Source: the platform's 2 MB a row, half of it. */
const MOST = 1_000_000;

/** The long run has five hundred plantings, the usual one a fifth of them. */
const SCALE = (env as unknown as { readonly DEPTH: string }).DEPTH === "full" ? 1 : 1 / 5;

const shell = shellWith({ engine });
const YEARS = Array.from({ length: 10 }, (_, at) => 2018 + at);
const FEEDS = ["sessions.ics", "tasks.ics", "warnings.ics"];

async function publish(garden: string, year: number, plantings: number, base = 0): Promise<number> {
  const path = `${await linkTo(garden, "admin")}plans/${year}`;
  const file = `plans/${garden}/${year}.yaml`;
  return (await ask(shell, path, put({ text: gardenText({ year, plantings }), file }, base)))
    .status;
}

async function expectServed(garden: string): Promise<void> {
  const helper = await linkTo(garden, "helper", "imre");
  const owner = await linkTo(garden, "owner");
  const pages = ["", "calendar", "frost", "frost?low=28", "room", "pictures", "season.svg"];
  for (const rest of [...FEEDS, ...pages, "sheet", "year", "diary"])
    expect([rest, (await ask(shell, `${helper}${rest}`)).status]).toEqual([rest, 200]);
  for (const rest of ["", "plan/2027", "links", "leaving", `${garden}.zip`])
    expect([rest, (await ask(shell, `${owner}${rest}`)).status]).toEqual([rest, 200]);
}

/** The largest value of any column of any table [bytes]. */
const largestValue = (garden: string) =>
  inStore(garden, (sql) => {
    const tables = [
      "plans",
      "pieces",
      "fingerprints",
      "tasks",
      "events",
      "ledger",
      "feeds",
      "former",
      "moved",
    ];
    const sizes = tables.flatMap((table) => {
      const columns = sql.rows<{ name: string }>(`SELECT name FROM pragma_table_info('${table}')`);
      return columns.map(({ name }) => {
        const query = `SELECT coalesce(max(length(CAST(${name} AS BLOB))), 0) AS size FROM ${table}`;
        return sql.rows<{ size: number }>(query)[0]?.size ?? 0;
      });
    });
    return Math.max(...sizes);
  });

test("five hundred plantings over ten years are published, polled, tapped and shown", async () => {
  const garden = "ten-years";
  for (const year of YEARS) expect(await publish(garden, year, 50 * SCALE)).toBe(201);
  await expectServed(garden);
  const helper = await linkTo(garden, "helper", "imre");
  const task = await inStore(garden, (sql) =>
    sql.rows<{ id: string }>(
      "SELECT id FROM tasks WHERE event IS NOT NULL AND id GLOB '2027/*' LIMIT 1",
    ),
  );
  const body = new URLSearchParams({ task: task[0]?.id ?? "", say: "done" }).toString();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  const page = `${helper}on/${task[0]?.id}`;
  expect((await ask(shell, page, { method: "POST", body, headers })).status).toBe(303);
  expect((await ask(shell, page)).status).toBe(200);
  expect(await inStore(garden, buildRecord)).toMatchObject({ line: 1, failures: 0 });
  expect(await largestValue(garden)).toBeLessThan(MOST);
}, 300_000);

test("a garden that grows from two hundred plantings to five hundred keeps its feeds fresh", async () => {
  const garden = "grows";
  expect(await publish(garden, 2027, 200 * SCALE)).toBe(201);
  await expectServed(garden);
  const tasks = `${await linkTo(garden, "helper", "imre")}tasks.ics`;
  const before = await (await ask(shell, tasks)).text();
  expect(await publish(garden, 2027, 500 * SCALE, 1)).toBe(200);
  const after = await (await ask(shell, tasks)).text();
  expect(after.length).toBeGreaterThan(before.length);
  const behind = await inStore(garden, (sql) =>
    sql.rows("SELECT 1 FROM feeds, build WHERE feeds.build <> build.number"),
  );
  expect(behind).toEqual([]);
  expect(await largestValue(garden)).toBeLessThan(MOST);
}, 300_000);
