import { runDurableObjectAlarm } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { damageNotes, mendDamage } from "../../../src/host/store/damage.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { faultsOf, readStrictly } from "../../strict.ts";
import { ask, inStore, linkTo, publish, settled, shellWith } from "../web/garden.ts";

const DAY = 86_400_000;
/** Sunday 2 May 2027; the next day all is looked through. */
const SUNDAY = Date.UTC(2027, 4, 2, 15);
let now = SUNDAY;
const shell = shellWith({ engine, now: () => now });
const FULL = (env as unknown as { readonly DEPTH: string }).DEPTH === "full";
/** A busy machine takes its time over a table of many columns. */
const SLOW_MS = 600_000;
const told: Record<number, number> = {};

beforeEach(() => {
  now = SUNDAY;
  vi.spyOn(console, "error").mockReturnValue();
});
afterEach(() => vi.restoreAllMocks());
afterAll(() => console.log(`answers beside damage: ${JSON.stringify(told)}`));

const PLAN = `garden: Quarry Lane
year: 2027
place: { clock: America/Denver, latitude: 46.6, last frost: about 6 May, first frost: about 2 Oct }
people: { Imre: { gardens: Sat 9-12 }, Oda: { gardens: Sun 9-12 } }
away:
  - Oda, 19 to 23 Jun
beds:
  South bed:
    is: 12 x 4 ft
    crops: [carrot, beet, lettuce]
`;

/** The ways in which a value of a type is damaged; each is SQL over the column it is put in for. */
const WAYS: Readonly<Record<string, readonly string[]>> = {
  TEXT: [
    "substr(COL, 1, length(COL) / 2)",
    "substr(COL, 1, length(COL) / 2) || '#' || substr(COL, length(COL) / 2 + 2)",
    "'[]'",
    "'9999-99-99'",
    "''",
  ],
  INTEGER: ["-1", "COL + 1", "9007199254740991", "0"],
  BLOB: [
    "CAST(substr(COL, 1, length(COL) / 2) AS BLOB)",
    "CAST(substr(COL, 1, length(COL) / 2) || x'00' || substr(COL, length(COL) / 2 + 2) AS BLOB)",
  ],
};

type Column = { readonly table: string; readonly name: string; readonly type: string };

/** Every column of every table that a garden stores. */
function columnsIn(sql: SqlStore): readonly Column[] {
  const tables = sql.rows<{ readonly name: string }>(
    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT GLOB 'sqlite_*' AND name NOT GLOB '_cf_*' ORDER BY name",
  );
  return tables.flatMap(({ name: table }) =>
    sql
      .rows<Omit<Column, "table">>(`SELECT name, type FROM pragma_table_info('${table}')`)
      .map((column) => ({ table, ...column })),
  );
}

const form = (fields: Record<string, string>): RequestInit => ({
  method: "POST",
  body: new URLSearchParams(fields).toString(),
  headers: { "content-type": "application/x-www-form-urlencoded" },
});

async function count(answer: Response): Promise<Response> {
  told[answer.status] = (told[answer.status] ?? 0) + 1;
  return answer;
}

/** A garden with something in every table. */
async function madeAs(garden: string): Promise<void> {
  expect((await publish(shell, garden, PLAN)).status).toBe(201);
  const [owner, imre] = [await linkTo(garden, "owner"), await linkTo(garden, "helper", "imre")];
  await ask(shell, `${imre}sessions.ics`);
  await ask(shell, `${imre}tasks.ics`);
  await publish(shell, garden, PLAN.replace("carrot, ", "carrot, radish, "), 1);
  await ask(shell, `${owner}diary`, form({ say: "low 31 °F", day: "2027-05-01" }));
  await ask(shell, `${owner}diary`, form({ say: "a fox came by", day: "2027-05-01" }));
  await ask(shell, `${owner}links`, form({ do: "revoke", link: "reader-1" }));
  await ask(shell, `${owner}links`, form({ do: "phrase" }));
  await ask(shell, `${owner}links`, form({ do: "next" }));
  await ask(shell, `${owner}diary/back`, form({ do: "take back", lines: "2-2" }));
  await ask(shell, `${owner}year`);
  await inStore(garden, (sql) => {
    sql.rows("DROP TRIGGER diary_never_changed");
    sql.rows("INSERT OR IGNORE INTO former VALUES ('a', '[]', 0)");
  });
}

/** Damages one value: that of a row in the middle of its table. Says whether there was one to damage. */
function damage(sql: SqlStore, { table, name }: Column, way: string): boolean {
  const keys = sql
    .rows<{ readonly name: string }>(`SELECT name FROM pragma_table_info('${table}') WHERE pk > 0`)
    .map((key) => key.name);
  const key = keys.length === 0 ? "rowid" : keys.join(", ");
  const row = `SELECT ${key} FROM ${table} LIMIT 1 OFFSET (SELECT count(*) / 2 FROM ${table})`;
  try {
    const set = `${name} = ${way.replaceAll("COL", name)}`;
    return sql.rows(`UPDATE ${table} SET ${set} WHERE (${key}) = (${row}) RETURNING 1`).length > 0;
  } catch {
    // The table's own rules refuse that value, or another row has that key.
    return false;
  }
}

async function feedIsWhole(path: string): Promise<void> {
  const answer = await count(await ask(shell, path));
  expect(answer.status, path).toBe(200);
  expect(faultsOf(new Uint8Array(await answer.arrayBuffer())), path).toEqual([]);
}

const PAGES = ["diary", "plan/2027", "links", "leaving", "room", "year", "sheet", "pictures"];

/** Polls, pages, a tap, words and a save, each answered as if nothing were damaged. `turn` chooses among the pages. */
async function allIsAnswered(garden: string, turn: number): Promise<void> {
  const [owner, imre] = [await linkTo(garden, "owner"), await linkTo(garden, "helper", "imre")];
  for (const feed of ["sessions.ics", "tasks.ics"]) await feedIsWhole(imre + feed);
  const job = await inStore(garden, (sql) =>
    sql.rows<{ id: string }>("SELECT id FROM tasks WHERE length(id) > 9 ORDER BY id LIMIT 1"),
  );
  const task = job[0]?.id ?? "2027/beet/sow/1";
  const pages = FULL ? ["", ...PAGES] : ["", PAGES[turn % PAGES.length] ?? ""];
  for (const rest of pages)
    expect((await count(await ask(shell, owner + rest))).status, rest).toBe(200);
  expect((await ask(shell, await linkTo(garden, "reader"))).status, "revoked").toBe(404);
  const tap = await count(await ask(shell, `${imre}on/${task}`, form({ task, say: "done" })));
  expect([303, 400], "a tap").toContain(tap.status);
  const words = form({ say: `beets up, ${now}`, day: "2027-05-02" });
  expect((await count(await ask(shell, `${imre}diary`, words))).status, "words").toBe(303);
  const page = await (await ask(shell, `${owner}plan/2027`)).text();
  const base = /name="base" value="(\d+)"/.exec(page)?.[1] ?? "";
  const text = `${PLAN}# ${now}\n`;
  const saved = await count(await ask(shell, `${owner}plan/2027`, form({ base, text })));
  expect(saved.status, "a save").toBe(303);
  await settled(garden);
}

/** Monday comes, on which all is looked through; nothing is left to mend then. Ends on the Sunday after. */
async function weekPasses(garden: string): Promise<void> {
  now += DAY;
  await runDurableObjectAlarm(env.GARDENS.getByName(garden));
  await settled(garden);
  await feedIsWhole(`${await linkTo(garden, "helper", "imre")}tasks.ics`);
  expect(await inStore(garden, (sql) => mendDamage(sql, now)), "nothing is left to mend").toBe(
    false,
  );
  now += 6 * DAY;
}

const COLUMNS = await inStore("columns", columnsIn);
const TABLES = [...new Set(COLUMNS.map(({ table }) => table))];

describe("one damaged value shuts nobody out and is in no calendar", () => {
  test.each(TABLES)(
    "in %s",
    async (table) => {
      let damaged = 0;
      await madeAs(table);
      for (const [at, column] of COLUMNS.filter((each) => each.table === table).entries()) {
        const ways = WAYS[column.type] ?? [];
        for (const way of FULL ? ways : ways.slice(at % ways.length, (at % ways.length) + 1)) {
          if (!(await inStore(table, (sql) => damage(sql, column, way)))) continue;
          damaged += 1;
          await allIsAnswered(table, damaged).catch((error: unknown) => {
            throw new Error(`${column.name} = ${way}: ${String(error)}`, { cause: error });
          });
          await inStore(table, (sql) => mendDamage(sql, now));
          await settled(table);
        }
      }
      await weekPasses(table);
      if (!["gone", "schema", "copies", "weather", "damage"].includes(table))
        expect(damaged, "something was damaged").toBeGreaterThan(0);
    },
    SLOW_MS,
  );
});

describe("the owner is told", () => {
  const homeOf = async (garden: string, role: "owner" | "helper") =>
    (await ask(shell, await linkTo(garden, role))).text();

  test("of a plan's text and of a diary's line, with what is left of it, and nobody else is", async () => {
    await madeAs("told");
    await inStore("told", (sql) => {
      sql.rows("UPDATE plans SET text = substr(text, 1, 40) WHERE version = 2");
      sql.rows("UPDATE diary SET text = 'low 91 °F' WHERE id = 1");
      expect(mendDamage(sql, now)).toBe(true);
      expect(mendDamage(sql, now), "once").toBe(false);
      expect(damageNotes(sql, now)).toHaveLength(2);
      expect(damageNotes(sql, now + 15 * DAY)).toEqual([]);
    });
    const home = await homeOf("told", "owner");
    expect(home).toContain("The text of the plan for 2027, version 2, was damaged");
    expect(home).toContain("Line 1 of the diary was damaged");
    expect(home).toContain("low 91 °F");
    expect(await homeOf("told", "helper")).not.toContain("damaged");
    await feedIsWhole(`${await linkTo("told", "owner")}tasks.ics`);
  });

  test("of what was calculated anew, and the calendar is then what it was", async () => {
    await madeAs("again");
    const path = `${await linkTo("again", "helper", "imre")}tasks.ics`;
    const events = async () => {
      const answer = await ask(shell, path);
      return readStrictly(new Uint8Array(await answer.arrayBuffer())).events;
    };
    const before = (await events()).map(({ stamp, sequence, ...event }) => event);
    await inStore("again", (sql) => {
      sql.rows("UPDATE events SET json = replace(json, 'beets', 'beats')");
      sql.rows("UPDATE tasks SET card = replace(card, '2', '3'), baseline = baseline + 1");
      sql.rows("UPDATE ledger SET text = replace(text, 'e', 'x')");
      sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 20)");
      expect(mendDamage(sql, now)).toBe(true);
    });
    expect((await events()).map(({ stamp, sequence, ...event }) => event)).toEqual(before);
    expect(await homeOf("again", "owner")).toContain("It was calculated anew.");
  });
});
