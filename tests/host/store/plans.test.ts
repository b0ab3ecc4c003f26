import { runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import { gardenRecord, loadGarden } from "../../../src/host/store/gardens.ts";
import { linkUse } from "../../../src/host/store/links.ts";
import {
  allVersions,
  damagedVersions,
  insertVersion,
  loadReadPlan,
  mendInForce,
  type PlanToStore,
  plansInForce,
  planVersion,
  planVersions,
  savedPlan,
  savePlan,
  storeReading,
  summaryOf,
  wholeVersionBefore,
} from "../../../src/host/store/plans.ts";
import { type SqlStore, sqlStoreOf } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";
import { bare, firstOf } from "./made.ts";

const BESIDE = { "weather.yaml": "low: []\n" };

function saving(over: Partial<PlanToStore> = {}): PlanToStore {
  const text = "garden: Quarry Lane\n";
  const plan = bare("Quarry Lane", over.year);
  return firstOf("quarry-lane", { text, beside: BESIDE, plan, ...over });
}

const inLane = <Result>(work: Parameters<typeof inStore<Result>>[1]) =>
  inStore("quarry-lane", work);

const revision = (garden: string) => inStore(garden, (sql) => gardenRecord(sql)?.revision ?? 0);

describe("saving a plan", () => {
  beforeAll(async () => {
    expect(await inLane((sql) => savePlan(sql, saving()))).toBe(1);
  });

  test("gives back what was saved, texts beside it included", async () => {
    const saved = await inLane((sql) => savedPlan(sql, 2027));
    expect(saved).toMatchObject({ version: 1, beside: BESIDE, text: "garden: Quarry Lane\n" });
    expect(saved?.summary.name).toBe("Quarry Lane");
    expect(await inLane((sql) => loadReadPlan(sql, 2027))).toEqual(bare("Quarry Lane"));
    expect(await inLane((sql) => savedPlan(sql, 2026))).toBeNull();
  });

  test("over the version in force gives the next and keeps the one before", async () => {
    expect(await inLane((sql) => savePlan(sql, saving({ base: 1, text: "second" })))).toBe(2);
    const texts = await inLane((sql) => allVersions(sql).map(({ text }) => text));
    expect(texts).toEqual(["garden: Quarry Lane\n", "second"]);
    expect(await inLane((sql) => planVersion(sql, { year: 2027, version: 1 }))).toEqual({
      text: "garden: Quarry Lane\n",
      beside: BESIDE,
      isWhole: true,
    });
    expect(await inLane((sql) => planVersion(sql, { year: 2027, version: 9 }))).toBeNull();
    const versions = await inLane((sql) => planVersions(sql, 2027).map(({ version }) => version));
    expect(versions).toEqual([2, 1]);
  });

  test("over an older version stores nothing and raises nothing", async () => {
    const before = await revision("quarry-lane");
    const late = saving({ base: 1, text: "late" });
    expect(await inLane((sql) => savePlan(sql, late))).toBeNull();
    expect((await inLane((sql) => savedPlan(sql, 2027)))?.text).toBe("second");
    expect(await revision("quarry-lane")).toBe(before);
  });

  test("from one version twice at once lets one of them through", async () => {
    const both = await Promise.all(
      ["one", "other"].map((text) => inLane((sql) => savePlan(sql, saving({ base: 2, text })))),
    );
    expect(both.toSorted()).toEqual([3, null]);
  });

  test("of another year stands beside it, in year order", async () => {
    await inLane((sql) => savePlan(sql, saving({ year: 2026, text: "the year before" })));
    const stored = await inLane(loadGarden);
    expect(stored?.plans.map(({ year }) => year)).toEqual([2026, 2027]);
  });

  test("as the very first is refused where there is any, and the address is the newest", async () => {
    const first = saving({ year: 2028, first: true, origin: "https://other.example" });
    expect(await inLane((sql) => savePlan(sql, first))).toBeNull();
    expect((await inLane(gardenRecord))?.origin).toBe("https://garden.example");
    await inLane((sql) => savePlan(sql, { ...first, first: false }));
    expect((await inLane(gardenRecord))?.origin).toBe("https://other.example");
  });

  test("remembers everybody whom any version named", async () => {
    const people = (names: readonly string[], base: number) =>
      firstOf("crowd", { base, plan: bare("Crowd", 2027, names) });
    await inStore("crowd", (sql) => savePlan(sql, people(["Oda", "Imre"], 0)));
    await inStore("crowd", (sql) => savePlan(sql, people(["Cy"], 1)));
    expect((await inStore("crowd", linkUse)).people).toEqual(["cy", "imre", "oda"]);
  });
});

/** The plans in force as the versions themselves say it. */
const newestVersions = (sql: SqlStore) =>
  sql.rows<{ readonly year: number; readonly version: number }>(
    "SELECT year, max(version) AS version FROM plans GROUP BY year ORDER BY year",
  );
const inForce = (sql: SqlStore) =>
  plansInForce(sql).map(({ year, version }) => ({ year, version }));

describe("the plans in force", () => {
  test("are each year's newest version, whatever is saved, changed or taken away", async () => {
    await inStore("in-force", (sql) => {
      for (const base of [0, 1, 2]) savePlan(sql, firstOf("in-force", { base }));
      savePlan(sql, firstOf("in-force", { year: 2026 }));
      expect(inForce(sql)).toEqual(newestVersions(sql));
      sql.rows("UPDATE plans SET read_by = 'code 9', file = 'other.yaml' WHERE version = 3");
      sql.rows("UPDATE plans SET read_by = 'code 8' WHERE version = 2");
      expect(plansInForce(sql)[1]).toMatchObject({ readBy: "code 9", file: "other.yaml" });
      sql.rows("DELETE FROM plans WHERE version IN (1, 3)");
      expect(inForce(sql)).toEqual([{ year: 2027, version: 2 }]);
      expect(plansInForce(sql)[0]?.readBy).toBe("code 8");
      sql.rows("DELETE FROM plans");
      expect(plansInForce(sql)).toEqual([]);
    });
  });

  test("are read in one row a year, however many versions are kept", async () => {
    await runInDurableObject(env.GARDENS.getByName("many-versions"), (_, { storage }) => {
      const sql = sqlStoreOf(storage);
      for (let base = 0; base < 25; base++) savePlan(sql, firstOf("many-versions", { base }));
      let read = 0;
      const rows = <Row>(query: string) => {
        const cursor = storage.sql.exec<never>(query);
        const found: readonly Row[] = cursor.toArray();
        read += cursor.rowsRead;
        return found;
      };
      expect(inForce({ ...sql, rows })).toEqual([{ year: 2027, version: 25 }]);
      expect(read).toBe(1);
    });
  });
});

describe("a garden's revision", () => {
  test("rises with every plan added, changed or taken away, however it came about", async () => {
    await inStore("brook", (sql) => {
      savePlan(sql, firstOf("brook"));
      savePlan(sql, firstOf("brook", { base: 1 }));
      const seen = [gardenRecord(sql)?.revision];
      sql.rows("UPDATE plans SET text = 'by hand' WHERE version = 2");
      seen.push(gardenRecord(sql)?.revision);
      sql.rows("DELETE FROM plans WHERE version = 2");
      expect([...seen, gardenRecord(sql)?.revision]).toEqual([2, 3, 4]);
    });
  });

  test("rises when a newer code's reading is kept, and the text stays", async () => {
    await inStore("weir", (sql) => {
      savePlan(sql, firstOf("weir", { text: "as it was" }));
      const anew = { plan: bare("Weir"), readBy: "code 2" };
      storeReading(sql, { year: 2027, version: 1 }, anew);
      expect(savedPlan(sql, 2027)).toMatchObject({ readBy: "code 2", text: "as it was" });
      expect(loadReadPlan(sql, 2027)?.name).toBe("Weir");
      expect(gardenRecord(sql)?.revision).toBe(2);
    });
  });

  test("stays where only what is built is stored", async () => {
    await inStore("lea", (sql) => {
      savePlan(sql, firstOf("lea"));
      sql.rows("INSERT INTO feeds VALUES ('owner-1', 'tasks.ics', 1, '', 0, 0, '', 0, NULL, NULL)");
      expect(gardenRecord(sql)?.revision).toBe(1);
    });
  });
});

test("a plan whose summary was cut short stands as it was read, and is to be read anew", async () => {
  await inStore("cut", (sql) => {
    savePlan(sql, firstOf("cut"));
    sql.rows("UPDATE plans SET summary = substr(summary, 1, 9), beside = '{'");
    const found = { readBy: "", summary: { name: "cut" }, beside: {}, isWhole: false };
    expect(savedPlan(sql, 2027)).toMatchObject(found);
    sql.rows("DELETE FROM pieces");
    expect(savedPlan(sql, 2027)).toMatchObject({ readBy: "", summary: { name: "" } });
  });
});

test("a text that was damaged is known by its check sum, and the newest whole one before it is found", async () => {
  await inStore("damaged", (sql) => {
    savePlan(sql, firstOf("damaged", { text: "one" }));
    savePlan(sql, firstOf("damaged", { text: "two", base: 1 }));
    expect(savedPlan(sql, 2027)?.isWhole).toBe(true);
    sql.rows("UPDATE plans SET text = 'tvo' WHERE version = 2");
    expect(damagedVersions(sql)).toMatchObject([{ year: 2027, version: 2 }]);
    const before = { year: 2027, version: 2 };
    expect(wholeVersionBefore(sql, before)).toMatchObject({ text: "one" });
    sql.rows("UPDATE plans SET text = 'x' WHERE version = 1");
    expect(wholeVersionBefore(sql, before)).toBeNull();
  });
});

test("the list of plans in force is put right by the versions themselves", async () => {
  await inStore("listed", (sql) => {
    savePlan(sql, firstOf("listed"));
    expect(mendInForce(sql)).toBe(0);
    for (const wrong of ["version = 9", "summary = 'x'", "year = 2031"]) {
      sql.rows(`UPDATE in_force SET ${wrong}`);
      expect(mendInForce(sql), wrong).toBeGreaterThan(0);
      expect(plansInForce(sql)).toMatchObject([{ year: 2027, version: 1, readBy: "code 1" }]);
    }
  });
});

test("a plan is summed up by its names, its clock and its measures", () => {
  expect(summaryOf(bare("Lea", 2027, ["Oda"]))).toEqual({
    ...{ name: "Lea", clock: "UTC", measures: "metric", beds: [] },
    people: [{ key: "oda", name: "Oda" }],
  });
});

test("of versions put in one by one the newest is in force, read or not", async () => {
  await inStore("brought", (sql) => {
    const { base: _, first: __, origin: ___, garden: ____, ...rest } = firstOf("brought");
    insertVersion(sql, { ...rest, version: 1 });
    insertVersion(sql, { ...rest, version: 2, plan: null });
    expect(sql.rows("SELECT version, summary FROM plans ORDER BY version")).toMatchObject([
      { version: 1 },
      { version: 2, summary: expect.stringMatching(/^null\n/) },
    ]);
    expect(loadReadPlan(sql, 2027)?.name).toBe("brought");
  });
});
