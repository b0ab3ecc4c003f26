import { describe, expect, test } from "vitest";
import { outlineOf } from "../../../src/host/store/task-halves.ts";
import {
  loadObservations,
  loadOutlines,
  loadSeasons,
  loadTaskOrder,
  loadTasks,
  type StoredYear,
  storeYear,
} from "../../../src/host/store/year.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { inStore } from "../in-store.ts";

const LATER = QUARRY.replace("year: 2027", "year: 2028");
const TAPPED = `${LATER}diary:\n  - 20 May: carrots up\n`;
const YEARS = [2027, 2028];
const yearOf = (text: string): StoredYear => tellOf([QUARRY, text], { on: "2028-05-25" }).year;

type Piece = { readonly name: string; readonly bytes: ArrayBuffer };
const piecesIn = (garden: string) =>
  inStore(garden, (sql) => sql.rows<Piece>("SELECT name, bytes FROM pieces ORDER BY name, part"));

describe("a stored year", () => {
  test("comes back as it was built", async () => {
    const year = yearOf(TAPPED);
    await inStore("whole", (sql) => {
      storeYear(sql, year);
      expect(loadObservations(sql)).toEqual(year.observations);
      expect(loadSeasons(sql, YEARS)).toEqual(year.seasons);
      const order = loadTaskOrder(sql, YEARS) ?? [];
      expect(order.map(([id]) => id)).toEqual(year.scheduled.map(({ task }) => task.id));
      expect(loadTasks(sql, order)).toEqual(year.scheduled);
      expect(loadOutlines(sql, order)).toEqual(year.scheduled.map(outlineOf));
    });
  });

  test("gives some of its tasks without reading the months of others", async () => {
    const year = yearOf(LATER);
    await inStore("some", (sql) => {
      storeYear(sql, year);
      sql.rows("DELETE FROM pieces WHERE name GLOB 'year/*-*' AND name NOT GLOB '*/2028-06'");
      const june = (loadTaskOrder(sql, YEARS) ?? []).filter(([, month]) => month === "2028-06");
      const own = june.filter(([id]) => id.startsWith("2028/"));
      const ids = loadTasks(sql, own)?.map(({ task }) => task.id);
      expect(own.length).toBeGreaterThan(10);
      expect(ids).toEqual(own.map(([id]) => id));
    });
  });

  test("is written again only where it has changed: a closed year and other months stay", async () => {
    await inStore("tapped", (sql) => {
      storeYear(sql, yearOf(LATER));
      sql.rows("UPDATE pieces SET bytes = x'00'");
      storeYear(sql, yearOf(TAPPED));
    });
    const written = (await piecesIn("tapped")).filter(({ bytes }) => bytes.byteLength > 1);
    const names = written.map(({ name }) => name);
    expect(names).toContain("year/2028/season");
    expect(names.filter((name) => name.startsWith("year/2027/"))).toEqual([]);
    expect(names.length).toBeLessThan((await piecesIn("tapped")).length / 2);
  });

  test("that lost a piece can't be read there, and elsewhere can", async () => {
    await inStore("damaged", (sql) => {
      storeYear(sql, yearOf(LATER));
      const order = loadTaskOrder(sql, YEARS) ?? [];
      sql.rows("DELETE FROM pieces WHERE name = 'year/2028/details/2028-05'");
      sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 30) WHERE name = 'year/2027/season'");
      expect([loadTasks(sql, order), loadSeasons(sql, YEARS)]).toEqual([null, null]);
      expect(loadSeasons(sql, [2028])).toHaveLength(1);
      expect(loadOutlines(sql, order)).toHaveLength(order.length);
      sql.rows("DELETE FROM pieces WHERE name = 'year/2027/order'");
      expect(loadTaskOrder(sql, YEARS)).toBeNull();
    });
  });
});
