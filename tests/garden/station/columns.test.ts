import { describe, expect, test } from "vitest";
import {
  type ColumnNames,
  columnLike,
  columnNamed,
  columnsOf,
  filterRows,
  noColumn,
  type RowFilter,
} from "../../../src/garden/station/columns.ts";
import { tableOf } from "../../../src/garden/station/table.ts";

function tabled(text: string) {
  const table = tableOf(text, "s.csv");
  if (!("head" in table)) throw new Error("unread");
  return table;
}
const found = (head: string, named: ColumnNames = {}) =>
  columnsOf(tabled(`${head}\n1`).head, named);
const TWO =
  "location,date,low\nSeattle,2012-01-01,1\nNew York,2012-01-01,2\nSeattle,2012-01-02,3\n";
const where = (...wheres: readonly RowFilter[]) => filterRows(tabled(TWO), wheres);

describe("the columns of a station's file", () => {
  test.each([
    ["DATE,TMAX,TMIN,PRCP", { date: 0, high: 1, low: 2, rain: 3 }],
    ["date,low,high", { date: 0, low: 1, high: 2, rain: null }],
    ["location,date,precipitation,temp_max,temp_min", { date: 1, rain: 2, high: 3, low: 4 }],
    [
      "Date/Time,Max Temp (°C),Min Temp (°C),Total Precip (mm)",
      { date: 0, high: 1, low: 2, rain: 3 },
    ],
  ])("are known by name: %s", (head, columns) => {
    expect(found(head)).toEqual({ columns, problems: [] });
  });

  test("are those the caller named, capitals aside", () => {
    expect(
      found("when,cold,warm,low", { date: "when", low: "Cold", high: "warm" }).columns,
    ).toEqual({
      date: 0,
      low: 1,
      high: 2,
      rain: null,
    });
  });

  test("are problems where they are not there, with the nearest name or all there are", () => {
    const { columns, problems } = found("date,low,high", { low: "lwo", rain: "showers" });
    expect(columns).toBeNull();
    expect(problems.map(({ is, shouldBe }) => `${is}: ${shouldBe}`)).toEqual([
      "There is no column lwo: Did you mean low",
      "There is no column showers: Name one of date, low, high",
    ]);
    expect(found("date,cold,high").problems.map(({ shouldBe }) => shouldBe)).toEqual([
      "Say which with --low, one of date, cold, high",
    ]);
  });

  test("are found by any of some names, the first of them first, units aside", () => {
    const { head } = tabled("Day,Date/Time,Latitude (y)\n1,2,3");
    expect(columnLike(head, ["datetime", "day"])).toBe(1);
    expect(columnLike(head, ["latitude"])).toBe(2);
    expect(columnLike(head, ["rain"])).toBeNull();
  });

  test("are found by their very name before capitals are passed over", () => {
    const { head } = tabled("LOW,low\n1,2");
    expect([columnNamed(head, "low"), columnNamed(head, "Low"), columnNamed(head, "lo")]).toEqual([
      1,
      0,
      null,
    ]);
    expect(noColumn(head, "lo").code).toBe("no-column");
  });
});

describe("the rows of one station", () => {
  test("are those with the value that was asked for", () => {
    const { rows, problems } = where({ column: "location", value: "Seattle" });
    expect(problems).toEqual([]);
    expect(rows.map(({ cells }) => cells[2])).toEqual(["1", "3"]);
    expect(
      where({ column: "location", value: "Seattle" }, { column: "low", value: "3" }).rows,
    ).toHaveLength(1);
  });

  test("must be of one, and the stations there are are named", () => {
    expect(where().problems).toMatchObject([
      {
        code: "several-stations",
        is: "Days of 2 stations stand in it: Seattle, New York",
        shouldBe: 'Choose one with --where "location=Seattle"',
      },
    ]);
  });

  test("are one station's though it changed its name", () => {
    const renamed = "STATION,NAME,DATE\nA1,OLD,2012-01-01\nA1,NEW,2012-01-02\n";
    expect(filterRows(tabled(renamed), []).problems).toEqual([]);
  });

  test("are a problem where none is left, or the column is not there", () => {
    expect(where({ column: "location", value: "Seatle" }).problems).toMatchObject([
      { code: "nothing-left", shouldBe: "Did you mean Seattle" },
    ]);
    expect(where({ column: "place", value: "Seattle" }).problems[0]?.code).toBe("no-column");
  });
});
