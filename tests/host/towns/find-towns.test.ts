import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findTowns } from "../../../src/host/towns/find-towns.ts";

const TABLE = readFileSync(new URL("../../../src/host/towns/towns.txt", import.meta.url), "utf8");
const names = (typed: string) => findTowns(TABLE, typed).map(({ name }) => name);

describe("towns", () => {
  test("are found by their names, however they are typed", () => {
    expect(findTowns(TABLE, "Helena")[0]).toEqual({
      name: "Helena, MT, United States",
      where: "46.6, -112.0",
    });
    for (const typed of ["Besançon", "besancon", " BESANCON ", "Besançon, France"])
      expect(names(typed)).toEqual(["Besançon, France"]);
    expect(names("São Paulo")[0]).toBe("São Paulo, Brazil");
    expect(names("Zürich")[0]).toBe("Zürich, Switzerland");
  });

  test("of one name are all offered, the largest first, before those that only begin so", () => {
    const found = names("Springfield");
    expect(found.slice(0, 3)).toEqual([
      "Springfield, MO, United States",
      "Springfield, MA, United States",
      "Springfield, IL, United States",
    ]);
    expect(found.length).toBeLessThanOrEqual(12);
    expect(names("Saint").length).toBeLessThanOrEqual(12);
  });

  test("of no such name are none, and no part of the table is taken for one", () => {
    for (const typed of ["", "  ", "Nowhere Much", ";", "US", "# Towns", "elena"])
      expect(names(typed), typed).toEqual([]);
  });
});

describe("the table", () => {
  const [head = "", ...rows] = TABLE.trimEnd().split("\n");

  test("names its source, its licence and its bound", () => {
    expect(head).toMatch(/20,000[\s\S]*GeoNames[\s\S]*CC BY 4\.0/);
  });

  test("has each row in its form, in the order of names, every place on earth to a tenth of a degree", () => {
    expect(rows.length).toBeGreaterThan(18_000);
    const wrong = rows.filter(
      (row) => !/^[a-z0-9 ]+;[^;]*;[A-Z]{2};[^;]*;-?\d{1,2}\.\d;-?\d{1,3}\.\d$/.test(row),
    );
    expect(wrong).toEqual([]);
    const keys = rows.map((row) => row.split(";")[0] ?? "");
    expect(keys.every((key, i) => i === 0 || (keys[i - 1] ?? "") <= key)).toBe(true);
    const places = rows.map((row) => row.split(";").slice(-2).map(Number));
    expect(
      places.every(([lat = 91, lon = 181]) => Math.abs(lat) <= 90 && Math.abs(lon) <= 180),
    ).toBe(true);
  });

  test("stays small enough to be sent up with the worker", () => {
    expect(TABLE.length).toBeLessThan(600_000);
  });
});
